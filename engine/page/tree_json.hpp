// A tree of texts, lists and maps as JSON, to be read again by `read_json`.
#pragma once

#include "engine/reading/tree.hpp"
#include "engine/report/json_writer.hpp"

namespace heelrule {

/// Writes a tree as the next value. What it means stays the same; places and overrides are left
/// out.
///
///     heel_counter: {left: firm}  ->  {"heel_counter": {"left": "firm"}}
void write_tree(JsonWriter& json, const Node& tree);

}  // namespace heelrule
