#include "engine/doubt/sensitivity.hpp"

#include <algorithm>

#include "engine/scoring/grade_reach.hpp"

namespace heelrule {
namespace {

constexpr std::size_t rows_in_all = 32'768;
constexpr std::size_t fewest_draws = 1'024;
constexpr std::size_t most_draws = 8'192;

// Of so many readings as many draws as the rows allow, in whole blocks.
std::size_t draws_for(std::size_t readings) {
  const std::size_t draws = rows_in_all / (readings + 2) / block_rows * block_rows;
  return std::clamp(draws, fewest_draws, most_draws);
}

class Mixing {
 public:
  Mixing(const Program& program, const Inspection& inspection,
         std::span<const DoubtfulReading> readings, Target target)
      : program_(program),
        readings_(readings),
        target_(target),
        first_(program),
        second_(program),
        mixed_(program),
        sums_(readings.size()) {
    fill_rows(program, inspection, first_);
    fill_rows(program, inspection, second_);
    fill_rows(program, inspection, mixed_);
  }

  std::vector<Effect> run() {
    const std::size_t wanted = draws_for(readings_.size());
    for (std::size_t draw = 0; draw < wanted; draw += block_rows) {
      run_block(draw);
    }
    std::vector<Effect> found;
    found.reserve(sums_.size());
    for (const EffectSums& sums : sums_) {
      found.push_back(sums.effect());
    }
    return found;
  }

 private:
  void run_block(std::size_t first_draw) {
    draw(readings_, Sample::first, first_draw, first_);
    draw(readings_, Sample::second, first_draw, second_);
    const Column of_first = results(first_);
    const Column of_second = results(second_);
    for (const DoubtfulReading& reading : readings_) {
      copy(reading, first_);
    }
    for (std::size_t i = 0; i < readings_.size(); ++i) {
      copy(readings_[i], second_);
      const Column of_mixed = results(mixed_);
      copy(readings_[i], first_);
      for (std::size_t row = 0; row < block_rows; ++row) {
        sums_[i].add(of_first[row], of_second[row], of_mixed[row]);
      }
    }
  }

  void copy(const DoubtfulReading& reading, const Block& from) {
    for (const Register input : reading.inputs) {
      mixed_.column(input) = from.column(input);
    }
  }

  Column results(Block& block) const {
    evaluate(program_, block);
    Column found;
    for (std::size_t row = 0; row < block_rows; ++row) {
      found[row] = result(block.outcome(row));
    }
    return found;
  }

  // Of a record in which nothing counts the worst grade, and no points.
  double result(const Outcome& outcome) const {
    switch (target_) {
      case Target::grade:
        return static_cast<double>(
            grade_reach(program_, outcome).grade.value_or(program_.grade_bounds.size() - 1));
      case Target::score:
        return outcome.weight > 0 ? outcome.earned / outcome.weight / full_credit * 100 : 0;
    }
    return 0;
  }

  const Program& program_;
  std::span<const DoubtfulReading> readings_;
  Target target_;
  Block first_;
  Block second_;
  Block mixed_;
  std::vector<EffectSums> sums_;
};

}  // namespace

std::vector<Effect> effects(const Program& program, const Inspection& inspection,
                            std::span<const DoubtfulReading> readings, Target target) {
  return readings.empty() ? std::vector<Effect>{}
                          : Mixing(program, inspection, readings, target).run();
}

}  // namespace heelrule
