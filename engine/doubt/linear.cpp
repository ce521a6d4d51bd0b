#include "engine/doubt/linear.hpp"

#include <algorithm>
#include <cmath>

#include "engine/formula/operation.hpp"

namespace heelrule {
namespace {

// By how much a register changes with each reading; empty: with none.
using Slopes = std::vector<double>;
using Linear = std::optional<Slopes>;

bool is_settled(const Linear& linear) { return linear && linear->empty(); }

Slopes times(Slopes slopes, double factor) {
  for (double& slope : slopes) {
    slope *= factor;
  }
  return slopes;
}

Slopes plus(const Slopes& a, const Slopes& b) {
  Slopes sum = a.size() < b.size() ? b : a;
  const Slopes& other = a.size() < b.size() ? a : b;
  for (std::size_t i = 0; i < other.size(); ++i) {
    sum[i] += other[i];
  }
  return sum;
}

class Propagation {
 public:
  Propagation(const Program& program, const Block& block, std::span<const DoubtfulReading> readings)
      : program_(program),
        block_(block),
        readings_(readings),
        linear_(program.register_count, Slopes{}) {}

  std::vector<std::optional<double>> run() {
    for (std::size_t i = 0; i < readings_.size(); ++i) {
      begin(i);
    }
    for (const Instruction& instruction : program_.instructions) {
      linear_[instruction.result] = through(instruction);
    }
    std::vector<std::optional<double>> found;
    found.reserve(program_.register_count);
    for (Register i = 0; i < program_.register_count; ++i) {
      found.push_back(seen(i) ? uncertainty(linear_[i]) : std::nullopt);
    }
    return found;
  }

 private:
  double at(Register index) const { return block_.column(index)[0]; }
  bool seen(Register index) const { return operation::is_seen(at(index)); }

  void begin(std::size_t reading) {
    const bool is_measure = std::holds_alternative<Spread>(readings_[reading].doubt);
    Slopes slopes(readings_.size(), 0.0);
    slopes[reading] = 1;
    for (const Register input : readings_[reading].inputs) {
      linear_[input] = is_measure ? Linear(slopes) : std::nullopt;
    }
  }

  Linear through(const Instruction& instruction) const {
    const auto& operands = instruction.operands;
    const bool all_settled = std::all_of(operands.begin(), operands.end(), [&](Register operand) {
      return operand == no_register || is_settled(linear_[operand]);
    });
    if (all_settled) {
      return Slopes{};
    }
    const Linear& a = linear_[operands[0]];
    const Linear& b = operands[1] == no_register ? a : linear_[operands[1]];
    if (!a || !b) {
      return std::nullopt;
    }
    switch (instruction.operation) {
      case Operation::settle:
        return a;
      case Operation::negate:
        return times(*a, -1);
      case Operation::add:
        return plus(*a, *b);
      case Operation::subtract:
        return plus(*a, times(*b, -1));
      case Operation::multiply:
        return is_settled(a)   ? Linear(times(*b, at(operands[0])))
               : is_settled(b) ? Linear(times(*a, at(operands[1])))
                               : std::nullopt;
      case Operation::divide:
        return is_settled(b) ? Linear(times(*a, 1 / at(operands[1]))) : std::nullopt;
      case Operation::constant:
      case Operation::input:
      case Operation::left:
      case Operation::right:
      case Operation::absolute:
      case Operation::tangent:
      case Operation::arctangent:
      case Operation::logical_not:
      case Operation::minimum:
      case Operation::maximum:
      case Operation::less:
      case Operation::at_most:
      case Operation::equal:
      case Operation::logical_and:
      case Operation::logical_or:
      case Operation::choose:
        return std::nullopt;
    }
    return std::nullopt;
  }

  std::optional<double> uncertainty(const Linear& linear) const {
    if (!linear) {
      return std::nullopt;
    }
    double squares = 0;
    for (std::size_t i = 0; i < linear->size(); ++i) {
      const double slope = (*linear)[i];
      if (slope != 0) {
        const double part = slope * std::get<Spread>(readings_[i].doubt).uncertainty;
        squares += part * part;
      }
    }
    return std::sqrt(squares);
  }

  const Program& program_;
  const Block& block_;
  std::span<const DoubtfulReading> readings_;
  std::vector<Linear> linear_;
};

}  // namespace

std::vector<std::optional<double>> linear_uncertainties(const Program& program, const Block& block,
                                                        std::span<const DoubtfulReading> readings) {
  return Propagation(program, block, readings).run();
}

}  // namespace heelrule
