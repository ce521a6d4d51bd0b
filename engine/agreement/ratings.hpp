// What several observers said of the same subjects.
#pragma once

#include <cmath>
#include <cstddef>
#include <vector>

#include "engine/agreement/estimate.hpp"

namespace heelrule {

/// A table with a row for each subject and a column for each observer. A cell is a number, the
/// index of a level (0, 1, …), or `unknown` where that observer did not rate that subject.
class Ratings {
 public:
  /// A table in which nothing is rated yet.
  Ratings(std::size_t subjects, std::size_t observers)
      : subjects_(subjects), observers_(observers), cells_(subjects * observers, unknown) {}

  std::size_t subjects() const { return subjects_; }
  std::size_t observers() const { return observers_; }

  double at(std::size_t subject, std::size_t observer) const {
    return cells_[subject * observers_ + observer];
  }
  void set(std::size_t subject, std::size_t observer, double rating) {
    cells_[subject * observers_ + observer] = rating;
  }
  bool has(std::size_t subject, std::size_t observer) const {
    return !std::isnan(at(subject, observer));
  }

  /// How many cells are rated.
  std::size_t count() const;

  /// The subjects that at least `least` observers rated.
  Ratings rated_by(std::size_t least) const;

  /// The subjects at these rows, in this order; a row may come again.
  Ratings rows(const std::vector<std::size_t>& chosen) const;

  /// The table without the column of one observer.
  Ratings without(std::size_t observer) const;

 private:
  std::size_t subjects_;
  std::size_t observers_;
  std::vector<double> cells_;
};

/// Calls `take(subject, observer, rating)` for each cell that is rated, row by row.
template <class Take>
void each_rating(const Ratings& ratings, Take take) {
  for (std::size_t subject = 0; subject < ratings.subjects(); ++subject) {
    for (std::size_t observer = 0; observer < ratings.observers(); ++observer) {
      if (ratings.has(subject, observer)) {
        take(subject, observer, ratings.at(subject, observer));
      }
    }
  }
}

}  // namespace heelrule
