// As in `evaluate`, every loop is turned into vector instructions.
#include "engine/scoring/rows.hpp"

#include <array>

#include "engine/model/rule.hpp"
#include "engine/scoring/for_each_machine.hpp"
#include "engine/scoring/joining.hpp"

namespace heelrule {
namespace {

constexpr std::array<Rows, block_rows> bits = [] {
  std::array<Rows, block_rows> one_each{};
  for (std::size_t row = 0; row < block_rows; ++row) {
    one_each[row] = Rows{1} << row;
  }
  return one_each;
}();

template <class Holds>
Rows rows_where(const Column& column, Holds holds) {
  Rows rows = 0;
  for (std::size_t row = 0; row < block_rows; ++row) {
    rows |= holds(column[row]) ? bits[row] : 0;
  }
  return rows;
}

template <class Holds>
Rows rows_where(const Column& a, const Column& b, Holds holds) {
  Rows rows = 0;
  for (std::size_t row = 0; row < block_rows; ++row) {
    rows |= holds(a[row], b[row]) ? bits[row] : 0;
  }
  return rows;
}

// Rows whose joined credit is such.
template <class Holds>
Rows rows_by_credit(const Contribution& contribution, const Block& block, Holds holds) {
  const Column& first = block.column(contribution.credits[0]);
  switch (contribution.joining) {
    case Joining::single:
      break;
    case Joining::worse:
      return rows_where(first, block.column(contribution.credits[1]),
                        [&](double a, double b) { return holds(worse_of(a, b)); });
    case Joining::mean:
      return rows_where(first, block.column(contribution.credits[1]),
                        [&](double a, double b) { return holds(mean_of(a, b)); });
  }
  return rows_where(first, holds);
}

// Rows in which it applies or may, but those of `decided` in which it does.
Rows open_but(Rows decided, const Contribution& contribution, const Block& block) {
  if (contribution.applies == no_register) {
    return ~decided;
  }
  const Column& applies = block.column(contribution.applies);
  const Rows may_apply = rows_where(applies, [](double whether) { return whether != 0; });
  const Rows does_apply = rows_where(applies, [](double whether) { return whether == 1; });
  return may_apply & ~(decided & does_apply);
}

Rows lacking(Register credit, const Block& block) {
  return credit == no_register
             ? 0
             : rows_where(block.column(credit), [](double earned) { return earned < full_credit; });
}

}  // namespace

HEELRULE_FOR_EACH_MACHINE
Rows rows_that_apply(const Contribution& contribution, const Block& block) {
  return contribution.applies == no_register
             ? ~Rows{0}
             : rows_where(block.column(contribution.applies),
                          [](double applies) { return applies == 1; });
}

HEELRULE_FOR_EACH_MACHINE
Rows rows_without_pass(const Contribution& contribution, const Block& block) {
  const auto passes = [](double credit) { return credit == full_credit; };
  return open_but(rows_by_credit(contribution, block, passes), contribution, block);
}

HEELRULE_FOR_EACH_MACHINE
Rows rows_not_seen(const Contribution& contribution, const Block& block) {
  const auto is_seen = [](double credit) { return credit >= 0; };
  return open_but(rows_by_credit(contribution, block, is_seen), contribution, block);
}

HEELRULE_FOR_EACH_MACHINE
Rows rows_with_lack(const Contribution& contribution, const Block& block) {
  const Rows either =
      lacking(contribution.credits[0], block) | lacking(contribution.credits[1], block);
  return contribution.applies == no_register
             ? either
             : either & rows_where(block.column(contribution.applies),
                                   [](double applies) { return applies == 1; });
}

}  // namespace heelrule
