#include "engine/agreement/level_counts.hpp"

namespace heelrule {

double LevelCounts::of_subject(std::size_t subject) const {
  double sum = 0;
  for (std::size_t level = 0; level < levels_; ++level) {
    sum += at(subject, level);
  }
  return sum;
}

std::vector<double> LevelCounts::of_levels() const {
  std::vector<double> sums(levels_, 0);
  for (std::size_t subject = 0; subject < subjects_; ++subject) {
    for (std::size_t level = 0; level < levels_; ++level) {
      sums[level] += at(subject, level);
    }
  }
  return sums;
}

LevelCounts level_counts(const Ratings& ratings, std::size_t levels) {
  const Ratings rated = ratings.rated_by(1);
  LevelCounts counts(rated.subjects(), levels);
  for (std::size_t subject = 0; subject < rated.subjects(); ++subject) {
    for (std::size_t observer = 0; observer < rated.observers(); ++observer) {
      if (rated.has(subject, observer)) {
        const auto level = static_cast<std::size_t>(rated.at(subject, observer));
        counts.add(subject, level, 1.0);
      }
    }
  }
  return counts;
}

double pair_agreement(const LevelCounts& counts, std::size_t subject, const LevelWeights& weights) {
  const double ratings = counts.of_subject(subject);
  if (ratings < 2) {
    return unknown;
  }
  double agreeing = 0;
  for (std::size_t one = 0; one < counts.levels(); ++one) {
    const double count = counts.at(subject, one);
    if (count == 0) {
      continue;
    }
    double met = -1;  // no rating makes a pair with itself
    for (std::size_t other = 0; other < counts.levels(); ++other) {
      met += weights.at(one, other) * counts.at(subject, other);
    }
    agreeing += count * met;
  }
  return agreeing / (ratings * (ratings - 1));
}

}  // namespace heelrule
