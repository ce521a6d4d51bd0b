// A plain table of ratings: a row for each subject, a column for each observer.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/quantity/parsed.hpp"
#include "engine/source/checked.hpp"
#include "engine/source/sources.hpp"

namespace heelrule {

/// What kind of ratings a table holds.
enum class RatingKind : std::uint8_t {
  names,    ///< words without an order
  levels,   ///< levels of a scale that was declared, in order
  numbers,  ///< measurements
};

/// The ratings as numbers, not-a-number where there is none.
struct RatingTable {
  RatingKind kind = RatingKind::names;
  std::vector<std::string> observers;
  std::vector<std::string> subjects;  ///< as the table names them, or by number
  std::vector<std::string> levels;    ///< of names: in alphabetical order; of numbers: none
  std::vector<double> level_numbers;  ///< of levels that are all numbers: these; else none
  std::vector<double> cells;          ///< row by row: the number, or the index of the level
};

/// How much a table may hold. Beyond that it is refused.
struct RatingLimits {
  static constexpr std::size_t subjects = 20'000;
  static constexpr std::size_t observers = 100;
  static constexpr std::size_t levels = 100;
};

/// A scale as it stands on a command line, `poor,fair,good`: its levels, lowest first. A problem
/// where there are fewer than two, or one is empty or comes twice.
Parsed<std::vector<std::string>> parse_scale(std::string_view text);

/// Reads comma-separated values (RFC 4180, a row a line). With a `scale` every rating is one of its
/// levels. Without, a table in which at least half of the ratings are numbers holds numbers, any
/// other holds names.
///
/// The first line names the observers. It may be left out where that shows: where all its cells are
/// numbers or levels of the scale; observers are then called `1`, `2`, … as they stand. A line that
/// reads `1,2,3` could be both, and is refused. A first column called `subject` names the rows. An
/// empty cell, or `not seen`, is no rating.
///
/// Reported: cells that are no ratings, with the nearest level; rows that are too short or too
/// long; observers of the same name; tables beyond RatingLimits, without two observers or without
/// rows.
Checked<RatingTable> read_ratings(const Sources& sources, std::uint32_t source,
                                  const std::vector<std::string>& scale);

}  // namespace heelrule
