// An inspection made ready for a batch: its numbers by place, and of the rest only what words need.
#pragma once

#include <cstddef>
#include <vector>

#include "engine/model/inspection.hpp"

namespace heelrule {

/// Where the number of a trait's side stands in `InspectionRow::numbers`.
constexpr std::size_t number_place(std::size_t trait, Side side) {
  return trait * 3 + static_cast<std::size_t>(side);
}

/// Made to be filled again and again, so that a long run of rows asks for no new memory.
struct InspectionRow {
  /// Who, when and what. Its observations are those that a report has words of: one with a note, a
  /// reason why nothing was seen, or a value that is no plain number (a fibre content, a marked
  /// size).
  Inspection inspection;

  /// What `plain_number` gives for each trait and side; not-a-number where there is none.
  std::vector<double> numbers;

  /// Forgets the row, and makes room for the numbers of `traits` traits.
  void clear(std::size_t traits);
};

/// The row of a whole inspection, which keeps all its observations.
void fill(InspectionRow& row, Inspection inspection, std::size_t traits);

}  // namespace heelrule
