// Every loop here runs over the rows of a block with nothing in it that depends on the row, so that
// the compiler turns it into vector instructions.
#include <algorithm>
#include <cmath>

#include "engine/formula/operation.hpp"
#include "engine/quantity/settle.hpp"
#include "engine/scoring/block.hpp"
#include "engine/scoring/for_each_machine.hpp"
#include "engine/scoring/joining.hpp"

namespace heelrule {
namespace {

template <class Function>
void each(Column& result, const Column& a, Function function) {
  for (std::size_t row = 0; row < block_rows; ++row) {
    result[row] = function(a[row]);
  }
}

template <class Function>
void each(Column& result, const Column& a, const Column& b, Function function) {
  for (std::size_t row = 0; row < block_rows; ++row) {
    result[row] = function(a[row], b[row]);
  }
}

void run(const Instruction& instruction, Block& block) {
  const auto operand = [&](std::size_t i) -> const Column& {
    return block.column(instruction.operands[i]);
  };
  Column& result = block.column(instruction.result);
  const auto one = [&](auto function) { each(result, operand(0), function); };
  const auto two = [&](auto function) { each(result, operand(0), operand(1), function); };
  switch (instruction.operation) {
    case Operation::negate:
      return one([](double a) { return operation::negate(a); });
    case Operation::absolute:
      return one([](double a) { return operation::absolute(a); });
    case Operation::tangent:
      return one([](double a) { return operation::tangent(a); });
    case Operation::arctangent:
      return one([](double a) { return operation::arctangent(a); });
    case Operation::logical_not:
      return one([](double a) { return operation::logical_not(a); });
    case Operation::settle:
      return one([](double a) { return settled(operation::finite(a)); });
    case Operation::add:
      return two([](double a, double b) { return operation::add(a, b); });
    case Operation::subtract:
      return two([](double a, double b) { return operation::subtract(a, b); });
    case Operation::multiply:
      return two([](double a, double b) { return operation::multiply(a, b); });
    case Operation::divide:
      return two([](double a, double b) { return operation::divide(a, b); });
    case Operation::minimum:
      return two([](double a, double b) { return operation::minimum(a, b); });
    case Operation::maximum:
      return two([](double a, double b) { return operation::maximum(a, b); });
    case Operation::less:
      return two([](double a, double b) { return operation::less(a, b); });
    case Operation::at_most:
      return two([](double a, double b) { return operation::at_most(a, b); });
    case Operation::equal:
      return two([](double a, double b) { return operation::equal(a, b); });
    case Operation::logical_and:
      return two([](double a, double b) { return operation::logical_and(a, b); });
    case Operation::logical_or:
      return two([](double a, double b) { return operation::logical_or(a, b); });
    case Operation::choose: {
      const Column& condition = operand(0);
      const Column& a = operand(1);
      const Column& b = operand(2);
      for (std::size_t row = 0; row < block_rows; ++row) {
        result[row] = operation::choose(condition[row], a[row], b[row]);
      }
      return;
    }
    case Operation::constant:
    case Operation::input:
    case Operation::left:
    case Operation::right:
      return;  // these have registers of their own, and no instruction
  }
}

// A scale of few bands, in one pass over the rows. `value - value` is 0 where a value was seen and
// not-a-number where not, so the credit is not seen there either.
template <std::size_t thresholds>
void judge_few(const CreditScale& scale, const Column& value, Column& credit) {
  std::array<double, thresholds> threshold{};
  std::array<double, thresholds> change{};
  for (std::size_t i = 0; i < thresholds; ++i) {
    threshold[i] = scale.thresholds[i];
    change[i] = scale.credits[i + 1].from - scale.credits[i].from;
  }
  const double first = scale.credits[0].from;
  each(credit, value, [&](double v) {
    double earned = first + (v - v);
    for (std::size_t i = 0; i < thresholds; ++i) {
      earned += v >= threshold[i] ? change[i] : 0;
    }
    return earned;
  });
}

void judge_many(const CreditScale& scale, const Column& value, Column& credit) {
  judge_few<0>(scale, value, credit);
  for (std::size_t i = 0; i < scale.thresholds.size(); ++i) {
    const double threshold = scale.thresholds[i];
    const double change = scale.credits[i + 1].from - scale.credits[i].from;
    each(credit, credit, value,
         [&](double earned, double v) { return earned + (v >= threshold ? change : 0); });
  }
}

void judge_flat(const CreditScale& scale, const Column& value, Column& credit) {
  switch (scale.thresholds.size()) {
    case 1:
      return judge_few<1>(scale, value, credit);
    case 2:
      return judge_few<2>(scale, value, credit);
    case 3:
      return judge_few<3>(scale, value, credit);
    case 4:
      return judge_few<4>(scale, value, credit);
    default:
      return judge_many(scale, value, credit);
  }
}

void judge_ramps(const CreditScale& scale, const Column& value, Column& credit) {
  for (std::size_t row = 0; row < block_rows; ++row) {
    credit[row] = operation::is_seen(value[row]) ? scale.credit(value[row]) : operation::not_seen;
  }
}

// The credit of a contribution as far as it is decided: *not seen* where it is open or does not
// apply.
void join(const Contribution& contribution, const Block& block, Column& credit) {
  with_joined_credit(contribution, block, [&](auto joined) {
    for (std::size_t row = 0; row < block_rows; ++row) {
      credit[row] = joined(row);
    }
  });
  if (contribution.applies != no_register) {
    each(credit, credit, block.column(contribution.applies),
         [](double earned, double applies) { return applies == 1 ? earned : operation::not_seen; });
  }
}

// What contributions add to the sums. All terms are whole numbers, or a half of them, so that it
// makes no difference in which order they are added; and conditions that choose between a number
// and 0 become vector instructions.
class Adding {
 public:
  Adding(const Program& program, const Block& block) : program_(program), block_(block) {}

  const OutcomeColumns& all() {
    for (const Contribution& contribution : program_.contributions) {
      join(contribution, block_, credit_);
      add_credit(contribution.weight);
      add_may_apply(contribution);
      if (contribution.cap > 0) {
        add_must(contribution);
      }
    }
    each(sums_.open_weight, sums_.open_weight, sums_.weight,
         [&](double may_apply, double seen) { return may_apply + always_applies_ - seen; });
    return sums_;
  }

 private:
  // Neither of the comparisons holds for a credit that is not seen.
  void add_credit(double weight) {
    for (std::size_t row = 0; row < block_rows; ++row) {
      const double credit = credit_[row];
      sums_.earned[row] += weight * (credit > 0 ? credit : 0);
      sums_.weight[row] += credit >= 0 ? weight : 0;
    }
  }

  // Until the end, the open weight is that of all that may apply.
  void add_may_apply(const Contribution& contribution) {
    if (contribution.applies == no_register) {
      always_applies_ += contribution.weight;
      return;
    }
    each(
        sums_.open_weight, sums_.open_weight, block_.column(contribution.applies),
        [&](double sum, double applies) { return sum + (applies != 0 ? contribution.weight : 0); });
  }

  void add_must(const Contribution& contribution) {
    if (contribution.applies == no_register) {
      open_.fill(1);
    } else {
      each(open_, block_.column(contribution.applies),
           [](double applies) { return applies != 0 ? 1.0 : 0.0; });
    }
    const double cap = contribution.cap;
    for (std::size_t row = 0; row < block_rows; ++row) {
      open_[row] -= credit_[row] >= 0 ? 1.0 : 0.0;
      const double failed = credit_[row] == 0 ? cap : 0;
      sums_.cap[row] = std::max(sums_.cap[row], failed);
      sums_.lowest_cap[row] = std::max(sums_.lowest_cap[row], std::max(failed, cap * open_[row]));
      sums_.open_musts[row] += open_[row];
    }
  }

  const Program& program_;
  const Block& block_;
  double always_applies_ = 0;  // weight of the contributions that do
  // Here and not in the block, one of whose columns they might be for all that the compiler knows.
  Column credit_{};
  Column open_{};
  OutcomeColumns sums_{};
};

}  // namespace

HEELRULE_FOR_EACH_MACHINE
void evaluate(const Program& program, Block& block) {
  for (const Instruction& instruction : program.instructions) {
    run(instruction, block);
  }
  for (const Judgement& judgement : program.judgements) {
    const CreditScale& scale = program.rule_programs[judgement.rule].scale;
    const Column& value = block.column(judgement.value);
    Column& credit = block.column(judgement.credit);
    if (scale.has_ramp) {
      judge_ramps(scale, value, credit);
    } else {
      judge_flat(scale, value, credit);
    }
  }
  block.outcomes_ = Adding(program, block).all();
}

}  // namespace heelrule
