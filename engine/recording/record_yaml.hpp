// A record as the text of a file.
#pragma once

#include <string>

#include "engine/reading/tree.hpp"

namespace heelrule {

/// A record, or another tree of maps, lists and texts, as YAML that reads back the same: a line for
/// each value of the head and each trait, every text in quotes, so that no reader takes `no` for
/// anything else.
///
///     inspection:
///       date: "2026-10-03"
///     found:
///       foot_length: {left: "243 mm", right: ["246", "247 mm"]}
std::string record_yaml(const Node& record);

}  // namespace heelrule
