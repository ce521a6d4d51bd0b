// YAML, read strictly.
#pragma once

#include <optional>

#include "engine/reading/tree.hpp"
#include "engine/source/diagnostic.hpp"
#include "engine/source/sources.hpp"

namespace heelrule {

/// Reads a source as one YAML document. YAML allows much that makes a rule file read otherwise than
/// it looks, or that makes a small file enormous; all of that is refused, each at its place: bytes
/// that are not UTF-8, control characters and text direction controls, anchors and aliases, tags,
/// merge keys, keys that are no texts or come twice, a second document, a quote that is not closed,
/// and files beyond TreeLimits.
std::optional<Node> read_yaml(const Sources& sources, std::uint32_t source,
                              Diagnostics& diagnostics);

}  // namespace heelrule
