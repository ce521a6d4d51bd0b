#include "engine/agreement/resampling.hpp"

#include <algorithm>

#include "engine/agreement/moments.hpp"
#include "engine/quantity/random_sequence.hpp"

namespace heelrule {
namespace {

constexpr std::uint64_t seed = 19;

// Between the two nearest, as most programs do: the rank p (n − 1), counted from 0.
double share_below(const std::vector<double>& sorted, double share) {
  const double rank = share * static_cast<double>(sorted.size() - 1);
  const auto below = static_cast<std::size_t>(rank);
  const std::size_t above = std::min(below + 1, sorted.size() - 1);
  return sorted[below] + (rank - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

}  // namespace

Estimate resampled(double value, std::size_t subjects,
                   const std::function<double(const std::vector<std::size_t>&)>& figure) {
  Estimate result{value, unknown, {}, IntervalBy::none};
  if (std::isnan(value) || subjects < 2) {
    return result;
  }
  RandomSequence random(seed);
  std::vector<double> drawn;
  std::vector<std::size_t> rows(subjects);
  for (std::size_t draw = 0; draw < resampling_draws; ++draw) {
    for (std::size_t& row : rows) {
      row = random.below(subjects);
    }
    const double found = figure(rows);
    if (!std::isnan(found)) {
      drawn.push_back(found);
    }
  }
  if (drawn.size() * 2 < resampling_draws) {
    return result;
  }
  std::sort(drawn.begin(), drawn.end());
  result.standard_error = moments_of(drawn).deviation();
  result.interval = {share_below(drawn, 1 - upper_tail), share_below(drawn, upper_tail)};
  result.by = IntervalBy::resampling;
  return result;
}

}  // namespace heelrule
