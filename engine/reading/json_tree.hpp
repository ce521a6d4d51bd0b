// JSON, read strictly, with places.
#pragma once

#include <optional>

#include "engine/reading/tree.hpp"
#include "engine/source/diagnostic.hpp"
#include "engine/source/sources.hpp"

namespace heelrule {

/// Reads a source as one JSON document (RFC 8259). Numbers and `true`/`false` become texts, as they
/// stand; `null` becomes nothing. Refused, each at its place: what is no JSON, a key that comes
/// twice, files beyond TreeLimits.
std::optional<Node> read_json(const Sources& sources, std::uint32_t source,
                              Diagnostics& diagnostics);

}  // namespace heelrule
