// Intervals for figures that no formula gives one for.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <vector>

#include "engine/agreement/estimate.hpp"

namespace heelrule {

/// How often subjects are drawn. Chosen by us: the ends of the interval then hold to about a
/// fiftieth of its width.
constexpr std::size_t resampling_draws = 2000;

/// Draws `subjects` subjects with putting back, `resampling_draws` times, works the figure out for
/// each draw, and takes the middle 95 % of what comes out (the percentile interval of Efron 1979).
/// Draws for which the figure is unknown are left out; if they are more than half, so is the
/// interval. The standard error is the standard deviation of the draws. The same on every machine.
///
/// `figure` gets the rows that were drawn.
Estimate resampled(double value, std::size_t subjects,
                   const std::function<double(const std::vector<std::size_t>&)>& figure);

}  // namespace heelrule
