// A text that may be YAML or JSON.
#pragma once

#include <optional>
#include <string_view>

#include "engine/reading/tree.hpp"
#include "engine/source/diagnostic.hpp"
#include "engine/source/sources.hpp"

namespace heelrule {

/// Whether a text is meant as JSON: its first sign that is no white space is `{`.
bool looks_like_json(std::string_view text);

/// Reads a source as JSON where it looks like that, else as YAML; strictly either way, with all
/// faults reported.
std::optional<Node> read_document(const Sources& sources, std::uint32_t source,
                                  Diagnostics& diagnostics);

}  // namespace heelrule
