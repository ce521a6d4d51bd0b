// What a record is worth beside the reference.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/marking/attribution.hpp"
#include "engine/marking/comparison.hpp"
#include "engine/marking/critical_fault.hpp"
#include "engine/marking/reference.hpp"

namespace heelrule {

struct Mark {
  Verdict verdict;                      ///< on the record
  std::vector<Comparison> comparisons;  ///< as `compare` gives them
  CriticalFaults critical;
  std::optional<double> points;         ///< 100 · Σ weight·credit / Σ weight; nothing: no weight
  std::optional<std::size_t> uncapped;  ///< what the points alone give, in `MarkingRules::marks`
  std::optional<std::size_t> mark;      ///< caps of critical faults obeyed
  Attribution attribution;

  /// How many comparisons came out so.
  std::size_t count(Likeness likeness) const;
};

/// Marks a record. Both were read against `program.rules`, and are of the same client and shoe.
Mark mark_record(const Program& program, const MarkingRules& marking, const Reference& reference,
                 const Inspection& record);

}  // namespace heelrule
