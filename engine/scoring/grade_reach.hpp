// The grade of an outcome, and those that it can still become.
#pragma once

#include <cstddef>
#include <optional>

#include "engine/scoring/block.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Grades by their index; the best is 0.
struct GradeReach {
  std::optional<std::size_t> by_score;  ///< what the score alone gives; nothing where none was seen
  std::optional<std::size_t> grade;     ///< after the caps of failed musts
  std::size_t lowest = 0;               ///< if whatever was not seen fails
  std::size_t highest = 0;              ///< if whatever was not seen passes in full

  bool operator==(const GradeReach&) const = default;
};

/// The reach of a row of an evaluated block.
GradeReach grade_reach(const Program& program, const Outcome& outcome);

}  // namespace heelrule
