// Krippendorff's alpha: any number of observers, any kind of scale, ratings may be missing.
#pragma once

#include <cstdint>

#include "engine/agreement/level_counts.hpp"

namespace heelrule {

/// What two ratings differ by.
enum class Metric : std::uint8_t {
  nominal,   ///< same or not
  ordinal,   ///< how many ratings lie between them
  interval,  ///< the difference of their numbers
  ratio,     ///< the difference as a share of the sum
};

struct KrippendorffAlpha {
  Estimate estimate;
  double pairable = 0;  ///< ratings of subjects that have two or more: the only ones that count
  double observed_disagreement = unknown;
  double expected_disagreement = unknown;
};

/// 1 − observed / expected disagreement. `numbers` are the values of the levels; of a nominal or
/// ordinal metric only their order counts. Levels in order, lowest first. Unknown where fewer than
/// two different ratings are pairable.
///
/// Source: Krippendorff 2011, Computing Krippendorff's Alpha-Reliability. The interval is
/// linearised over subjects with Student's t (Gwet, see `chance_corrected`); of an ordinal metric,
/// which is made from the ratings themselves, it comes from resampling, up to 20,000 ratings;
/// beyond, it is linearised as if the metric were given.
KrippendorffAlpha krippendorff_alpha(const LevelCounts& counts, Metric metric,
                                     const std::vector<double>& numbers);

/// The same by the interval metric, of measurements of which there may be any number of different
/// ones.
KrippendorffAlpha interval_alpha(const Ratings& numbers);

}  // namespace heelrule
