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

// Rows for which `holds(row)`.
template <class Holds>
Rows rows_where(Holds holds) {
  Rows rows = 0;
  for (std::size_t row = 0; row < block_rows; ++row) {
    rows |= holds(row) ? bits[row] : 0;
  }
  return rows;
}

Rows applying(const Contribution& contribution, const Block& block) {
  if (contribution.applies == no_register) {
    return ~Rows{0};
  }
  const Column& applies = block.column(contribution.applies);
  return rows_where([&](std::size_t row) { return applies[row] == 1; });
}

// Rows in which it applies or may, but those of `decided` in which it does.
Rows open_but(Rows decided, const Contribution& contribution, const Block& block) {
  if (contribution.applies == no_register) {
    return ~decided;
  }
  const Column& applies = block.column(contribution.applies);
  const Rows may_apply = rows_where([&](std::size_t row) { return applies[row] != 0; });
  return may_apply & ~(decided & applying(contribution, block));
}

Rows lacking(Register credit, const Block& block) {
  if (credit == no_register) {
    return 0;
  }
  const Column& earned = block.column(credit);
  return rows_where([&](std::size_t row) { return earned[row] < full_credit; });
}

}  // namespace

HEELRULE_FOR_EACH_MACHINE
Rows rows_that_apply(const Contribution& contribution, const Block& block) {
  return applying(contribution, block);
}

HEELRULE_FOR_EACH_MACHINE
Rows rows_without_pass(const Contribution& contribution, const Block& block) {
  const Rows pass = with_joined_credit(contribution, block, [](auto credit) {
    return rows_where([&](std::size_t row) { return credit(row) == full_credit; });
  });
  return open_but(pass, contribution, block);
}

HEELRULE_FOR_EACH_MACHINE
Rows rows_not_seen(const Contribution& contribution, const Block& block) {
  const Rows seen = with_joined_credit(contribution, block, [](auto credit) {
    return rows_where([&](std::size_t row) { return credit(row) >= 0; });
  });
  return open_but(seen, contribution, block);
}

HEELRULE_FOR_EACH_MACHINE
Rows rows_with_lack(const Contribution& contribution, const Block& block) {
  return applying(contribution, block) &
         (lacking(contribution.credits[0], block) | lacking(contribution.credits[1], block));
}

}  // namespace heelrule
