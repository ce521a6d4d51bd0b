// An inspection from its tree.
#pragma once

#include <optional>

#include "engine/model/inspection.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/reading/tree.hpp"
#include "engine/source/checked.hpp"
#include "engine/source/sources.hpp"

namespace heelrule {

/// Reads a source, YAML or JSON, as an inspection.
Checked<Inspection> load_inspection(const Sources& sources, std::uint32_t source,
                                    const RuleSet& rules);

/// Reads an inspection, made for or to be judged by `rules`. What was not recorded has no
/// observation. Reported: unknown traits with the nearest known name, values of derived traits, a
/// side where there is none, and all that `read_value` reports.
Inspection read_inspection(const Node& tree, const RuleSet& rules, Diagnostics& diagnostics);

/// Whether a record gives this value by sides: `{left: 243 mm, right: 246 mm}`.
bool is_by_sides(const Node& value);

/// Whether a text is a date of the calendar as ISO 8601 writes it: `2026-10-03`.
bool is_date(std::string_view text);

}  // namespace heelrule
