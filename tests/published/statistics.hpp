// Worked examples of tests/data/agreement_statistics.json, each with its source.
#pragma once

#include <simdjson.h>

#include <string>
#include <string_view>
#include <vector>

#include "engine/agreement/cohen_kappa.hpp"
#include "engine/agreement/level_counts.hpp"
#include "engine/agreement/ratings.hpp"

namespace heelrule {

/// One worked example.
class WorkedExample {
 public:
  /// Precondition: there is one of that name.
  explicit WorkedExample(std::string_view id);

  /// The number at a JSON pointer such as `/expected/linear/kappa`.
  double number(std::string_view pointer) const;
  std::vector<double> numbers(std::string_view pointer) const;

  /// Rows of subjects, columns of observers; null is no rating. Levels that count from 1 are
  /// brought to 0 by `first`.
  Ratings ratings(std::string_view pointer, double first = 0) const;
  CrossTable table(std::string_view pointer) const;
  LevelCounts counts(std::string_view pointer) const;

  bool has(std::string_view pointer) const;

 private:
  simdjson::dom::element at(std::string_view pointer) const;

  simdjson::dom::element example_;
};

/// The tolerance that all of them have.
constexpr double statistics_tolerance = 1e-9;

}  // namespace heelrule
