#include "engine/agreement/standing.hpp"

#include <algorithm>
#include <numeric>
#include <optional>

#include "engine/agreement/limits_of_agreement.hpp"
#include "engine/agreement/moments.hpp"

namespace heelrule {
namespace {

constexpr std::size_t fewest_observers = 3;

// An observer's differences from the mean of the others.
struct Own {
  std::size_t observer = 0;
  Moments differences;
};

std::vector<Own> differences_of_each(const Ratings& numbers) {
  std::vector<Own> all;
  for (std::size_t observer = 0; observer < numbers.observers(); ++observer) {
    const Moments moments = moments_of(differences(pairs_with_others(numbers, observer)));
    if (moments.count > 1) {
      all.push_back({observer, moments});
    }
  }
  return all;
}

using Chance = double Standing::*;

// The differences of all observers, each about its own mean.
struct Pooled {
  double observers = 0;
  double squares = 0;
  double freedom = 0;
};

void judge_bias(const Moments& own, const Pooled& all, Standing& standing) {
  const double error = std::sqrt(all.squares / all.freedom / own.count);
  const double freedom = all.freedom * (all.observers - 1) / all.observers;
  standing.bias = student_estimate(own.mean, error, freedom, -HUGE_VAL, HUGE_VAL);
  if (error > 0 && freedom > 0) {
    standing.bias_chance = 2 * student_share_above(std::fabs(own.mean) / error, freedom);
  } else {
    standing.bias_chance = own.mean == 0 ? 1 : 0;
  }
}

void judge_spread(const Moments& own, const Pooled& all, Standing& standing) {
  const double others_freedom = all.freedom - own.freedom();
  standing.spread = own.deviation();
  standing.others_spread =
      others_freedom > 0 ? std::sqrt((all.squares - own.squares) / others_freedom) : 0;
  if (others_freedom > 0 && standing.others_spread > 0) {
    const double ratio = standing.spread / standing.others_spread;
    standing.spread_chance = f_share_above(ratio * ratio, own.freedom(), others_freedom);
  }
}

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
  const std::vector<Own> all = differences_of_each(numbers);
  Pooled pooled;
  for (const Own& own : all) {
    pooled.observers += 1;
    pooled.squares += own.differences.squares;
    pooled.freedom += own.differences.freedom();
  }
  std::vector<Standing> result;
  for (const Own& own : all) {
    Standing standing;
    standing.observer = own.observer;
    standing.subjects = own.differences.count;
    judge_bias(own.differences, pooled, standing);
    judge_spread(own.differences, pooled, standing);
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
