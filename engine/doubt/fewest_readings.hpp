// How few readings have to be a little off for the grade to be another.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "engine/doubt/doubtful_reading.hpp"
#include "engine/model/inspection.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// A reading that is a little off (see `a_little_off`).
struct OffReading {
  std::size_t reading = 0;  ///< index in the readings that were given
  bool up = false;

  bool operator==(const OffReading&) const = default;
};

/// Readings which, all of them a little off at once, lead to another grade.
struct GradeMove {
  std::vector<OffReading> readings;
  std::size_t grade = 0;  ///< the grade that they lead to

  bool operator==(const GradeMove&) const = default;
};

/// What a search found.
struct FewestReadings {
  std::optional<GradeMove> move;  ///< none where so many readings move nothing
  std::size_t tried = 0;          ///< up to how many at once; all combinations of them

  bool operator==(const FewestReadings&) const = default;
};

/// How many readings are moved at once, at most.
constexpr std::size_t most_readings_at_once = 3;

/// The smallest set of `readings` that moves the grade of a record away from `grade`, found by
/// trying every set of one, then of two, then of three, each reading up and down. Of sets of one
/// size the first in the order of `readings` is taken. It stops short of a size that has more than
/// 20,000 combinations.
FewestReadings fewest_readings(const Program& program, const Inspection& inspection,
                               std::span<const DoubtfulReading> readings, std::size_t grade);

}  // namespace heelrule
