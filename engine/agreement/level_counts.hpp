// How often each level was given to each subject.
#pragma once

#include <cstddef>
#include <vector>

#include "engine/agreement/level_weights.hpp"
#include "engine/agreement/ratings.hpp"

namespace heelrule {

/// A row for each subject, a column for each level of the scale as it was declared: levels that
/// nobody used are kept. Who gave a level is forgotten.
class LevelCounts {
 public:
  LevelCounts(std::size_t subjects, std::size_t levels)
      : subjects_(subjects), levels_(levels), counts_(subjects * levels, 0) {}

  std::size_t subjects() const { return subjects_; }
  std::size_t levels() const { return levels_; }

  double at(std::size_t subject, std::size_t level) const {
    return counts_[subject * levels_ + level];
  }
  void add(std::size_t subject, std::size_t level, double count) {
    counts_[subject * levels_ + level] += count;
  }

  /// How many ratings a subject has.
  double of_subject(std::size_t subject) const;

  /// How many ratings there are of each level.
  std::vector<double> of_levels() const;

 private:
  std::size_t subjects_;
  std::size_t levels_;
  std::vector<double> counts_;
};

/// Counts the ratings, which are indices of levels below `levels`. Subjects that nobody rated are
/// left out: they say nothing.
LevelCounts level_counts(const Ratings& ratings, std::size_t levels);

/// The pairs of ratings of one subject that agree, each weighted, as a share of its pairs. Unknown
/// where it has fewer than two ratings.
///
///     counts 3 and 1, unweighted  ->  3 of 6 pairs, 0.5
double pair_agreement(const LevelCounts& counts, std::size_t subject, const LevelWeights& weights);

}  // namespace heelrule
