// What a YAML file must pass before a parser sees it.
#pragma once

#include <string_view>

#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// Reports a text with more brackets in a row, or more signs that shape its tree, than any of ours
/// has. A parser keeps up to 231 bytes for each such sign before it hands on a first value, and
/// what it keeps has no bound of its own. True if there is neither.
bool passes_yaml_gate(std::string_view text, std::uint32_t source, Diagnostics& diagnostics);

}  // namespace heelrule
