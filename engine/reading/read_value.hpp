// One recorded value, as the kind of its trait expects it.
#pragma once

#include <optional>
#include <string>

#include "engine/model/inspection.hpp"
#include "engine/reading/tree.hpp"
#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// A value of one side (or of both), with what was noted beside it.
struct RecordedValue {
  Value value;
  std::string note;
};

/// Reads a value of `trait`: the value itself; a list of repeats of a measure; `not seen`, perhaps
/// with a reason; or a map with `value` and `note`, `doubt`, `confirmed`. Reported: what the trait
/// cannot hold, a reading outside of the plausible range that is not confirmed, a bare number where
/// a unit is due.
std::optional<RecordedValue> read_value(const Trait& trait, const Node& node, Span where,
                                        Diagnostics& diagnostics);

}  // namespace heelrule
