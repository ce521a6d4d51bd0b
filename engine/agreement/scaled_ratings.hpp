// Ratings with what is known of their scale.
#pragma once

#include <cstddef>
#include <vector>

#include "engine/agreement/ratings.hpp"
#include "engine/reading/read_ratings.hpp"

namespace heelrule {

/// The most different numbers that are taken for levels, too: beyond that, who met whom exactly is
/// a matter of luck.
constexpr std::size_t most_number_levels = RatingLimits::levels;

/// The same ratings as levels and as numbers, as far as they are both.
struct ScaledRatings {
  RatingKind kind = RatingKind::names;
  Ratings levels;                     ///< indices; no rows where there are no levels
  std::vector<double> level_numbers;  ///< of each level, in order; of mere words 0, 1, 2, …
  Ratings numbers;                    ///< no rows where the ratings are words
  bool has_numbers() const { return numbers.subjects() > 0; }
  bool has_levels() const { return levels.subjects() > 0; }
  bool is_ordered() const { return kind != RatingKind::names; }
};

/// Ratings that are indices of `levels` declared levels, in order or not.
ScaledRatings level_ratings(Ratings indices, std::size_t levels, bool ordered);

/// Ratings that are indices of levels in order, of which these are the numbers.
ScaledRatings numbered_level_ratings(Ratings indices, std::vector<double> numbers);

/// Measurements. Where few of them differ, each different one is a level too.
ScaledRatings measured_ratings(Ratings numbers);

/// A table that was read.
ScaledRatings scaled_ratings(const RatingTable& table);

}  // namespace heelrule
