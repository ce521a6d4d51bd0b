// What thousands of draws of a record came to, counted.
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <vector>

#include "engine/doubt/draws.hpp"
#include "engine/model/verdict.hpp"

namespace heelrule {

/// How often a grade came out.
struct GradeCount {
  std::size_t given = 0;     ///< by what was seen
  std::size_t surely = 0;    ///< whatever was not seen
  std::size_t possibly = 0;  ///< with what was not seen it could

  bool operator==(const GradeCount&) const = default;
};

/// What one finding came to.
struct FindingCount {
  std::array<std::size_t, 5> statuses{};  ///< by `Status`
  bool varies = false;                    ///< its credit was not the same in every draw

  bool operator==(const FindingCount&) const = default;
};

/// What one value that a rule reads came to.
struct ValueCount {
  std::vector<std::size_t> bands;  ///< how often it lay in each
  std::size_t seen = 0;
  double sum = 0;      ///< of the differences from the value as recorded, stored unit
  double squares = 0;  ///< of their squares

  /// Standard deviation of the draws; 0 where fewer than two were seen.
  double deviation() const;

  bool operator==(const ValueCount&) const = default;
};

/// A value that a rule reads, by its register.
struct Watched {
  Register value = 0;
  std::uint32_t rule = 0;  ///< whose bands it is counted in
};

struct Tally {
  std::size_t draws = 0;
  std::vector<GradeCount> grades;      ///< as in the rule set
  std::vector<FindingCount> findings;  ///< as `Program::contributions`
  std::vector<ValueCount> values;      ///< as they were asked for

  bool operator==(const Tally&) const = default;
};

/// Runs `draw_count` draws of a record through the program; a single one where no reading is in
/// doubt. `watched` are the values to count.
Tally tally(const Program& program, const Inspection& inspection,
            std::span<const DoubtfulReading> readings, std::span<const Watched> watched);

}  // namespace heelrule
