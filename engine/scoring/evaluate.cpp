// Every loop here runs over the rows of a block with nothing in it that depends on the row, so that
// the compiler turns it into vector instructions.
#include <algorithm>
#include <cmath>

#include "engine/formula/operation.hpp"
#include "engine/quantity/settle.hpp"
#include "engine/scoring/block.hpp"
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

// `value - value` is 0 where a value was seen and not-a-number where not, so the credit is not seen
// there either.
void judge_flat(const CreditScale& scale, const Column& value, Column& credit) {
  for (std::size_t row = 0; row < block_rows; ++row) {
    credit[row] = scale.credits[0].from + (value[row] - value[row]);
  }
  for (std::size_t i = 0; i < scale.thresholds.size(); ++i) {
    const double threshold = scale.thresholds[i];
    const double change = scale.credits[i + 1].from - scale.credits[i].from;
    for (std::size_t row = 0; row < block_rows; ++row) {
      credit[row] += value[row] >= threshold ? change : 0;
    }
  }
}

void judge_ramps(const CreditScale& scale, const Column& value, Column& credit) {
  for (std::size_t row = 0; row < block_rows; ++row) {
    credit[row] = operation::is_seen(value[row]) ? scale.credit(value[row]) : operation::not_seen;
  }
}

}  // namespace

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
  Block::Sums& sums = block.sums_;
  sums = {};
  for (const Contribution& contribution : program.contributions) {
    const Column& a = block.column(contribution.credits[0]);
    const bool always = contribution.applies == no_register;
    const Column& applies = block.column(always ? contribution.credits[0] : contribution.applies);
    const double cap = contribution.cap;
    const auto add = [&](auto join) {
      for (std::size_t row = 0; row < block_rows; ++row) {
        const double credit = join(row);
        const double applied = always ? 1.0 : applies[row];
        const bool decided = applied == 1 && operation::is_seen(credit);
        const bool is_open = applied != 0 && !decided;
        const double seen = decided ? contribution.weight : 0;
        sums.earned[row] += seen * (decided ? credit : 0);
        sums.weight[row] += seen;
        sums.open_weight[row] += is_open ? contribution.weight : 0;
        if (cap > 0) {
          const bool failed = decided && credit == 0;
          sums.cap[row] = failed ? std::max(sums.cap[row], cap) : sums.cap[row];
          sums.lowest_cap[row] =
              failed || is_open ? std::max(sums.lowest_cap[row], cap) : sums.lowest_cap[row];
          sums.open_musts[row] += is_open ? 1 : 0;
        }
      }
    };
    switch (contribution.joining) {
      case Joining::single:
        add([&](std::size_t row) { return a[row]; });
        break;
      case Joining::worse: {
        const Column& b = block.column(contribution.credits[1]);
        add([&](std::size_t row) { return worse_of(a[row], b[row]); });
        break;
      }
      case Joining::mean: {
        const Column& b = block.column(contribution.credits[1]);
        add([&](std::size_t row) { return mean_of(a[row], b[row]); });
        break;
      }
    }
  }
}

}  // namespace heelrule
