#include "engine/agreement/standing.hpp"

#include <algorithm>
#include <numeric>
#include <optional>

#include "engine/agreement/limits_of_agreement.hpp"

namespace heelrule {
namespace {

constexpr std::size_t fewest_observers = 3;

struct Differences {
  std::size_t observer = 0;
  std::vector<double> values;
  double mean = 0;
  double squares = 0;  // about the mean

  double freedom() const { return static_cast<double>(values.size()) - 1; }
};

std::vector<Differences> differences(const Ratings& numbers) {
  std::vector<Differences> all;
  for (std::size_t observer = 0; observer < numbers.observers(); ++observer) {
    Differences own;
    own.observer = observer;
    for (const MeasuredPair& pair : pairs_with_others(numbers, observer)) {
      own.values.push_back(pair.first - pair.second);
    }
    if (own.values.size() < 2) {
      continue;
    }
    for (const double value : own.values) {
      own.mean += value / static_cast<double>(own.values.size());
    }
    for (const double value : own.values) {
      own.squares += (value - own.mean) * (value - own.mean);
    }
    all.push_back(std::move(own));
  }
  return all;
}

using Chance = double Standing::*;

// The column of each observer in a table from which some were taken out.
std::vector<Standing> far_ones(const Ratings& numbers, Chance chance) {
  Ratings left = numbers;
  std::vector<std::size_t> names(numbers.observers());
  std::iota(names.begin(), names.end(), std::size_t{0});
  std::vector<Standing> far;
  while (left.observers() >= fewest_observers) {
    const std::vector<Standing> all = standings(left);
    const auto furthest = std::min_element(
        all.begin(), all.end(),
        [&](const Standing& a, const Standing& b) { return a.*chance < b.*chance; });
    const double line = (1 - confidence) / static_cast<double>(numbers.observers());
    if (furthest == all.end() || !((*furthest).*chance < line)) {
      break;
    }
    far.push_back(*furthest);
    far.back().observer = names[furthest->observer];
    left = left.without(furthest->observer);
    names.erase(names.begin() + static_cast<std::ptrdiff_t>(furthest->observer));
  }
  return far;
}

}  // namespace

std::vector<Standing> standings(const Ratings& numbers) {
  const std::vector<Differences> all = differences(numbers);
  const auto observers = static_cast<double>(all.size());
  double squares = 0;
  double freedom = 0;
  for (const Differences& own : all) {
    squares += own.squares;
    freedom += own.freedom();
  }
  std::vector<Standing> result;
  for (const Differences& own : all) {
    Standing standing;
    standing.observer = own.observer;
    standing.subjects = static_cast<double>(own.values.size());
    const double error = std::sqrt(squares / freedom / standing.subjects);
    const double common_freedom = freedom * (observers - 1) / observers;
    standing.bias = student_estimate(own.mean, error, common_freedom, -HUGE_VAL, HUGE_VAL);
    standing.spread = std::sqrt(own.squares / own.freedom());
    const double others_freedom = freedom - own.freedom();
    standing.others_spread =
        others_freedom > 0 ? std::sqrt((squares - own.squares) / others_freedom) : 0;
    if (error > 0 && common_freedom > 0) {
      standing.bias_chance = 2 * student_share_above(std::fabs(own.mean) / error, common_freedom);
    } else {
      standing.bias_chance = own.mean == 0 ? 1 : 0;
    }
    if (others_freedom > 0 && standing.others_spread > 0) {
      const double ratio = standing.spread / standing.others_spread;
      standing.spread_chance = f_share_above(ratio * ratio, own.freedom(), others_freedom);
    }
    result.push_back(standing);
  }
  return result;
}

std::vector<Standing> far_biases(const Ratings& numbers) {
  return far_ones(numbers, &Standing::bias_chance);
}

std::vector<Standing> far_spreads(const Ratings& numbers) {
  return far_ones(numbers, &Standing::spread_chance);
}

}  // namespace heelrule
