// What every file must pass before anything else looks at it.
#pragma once

#include <string_view>

#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// Reports a text that is longer than TreeLimits::bytes, or the first thing in it that no file of
/// ours may hold (see `first_offence`). True if there is neither.
bool passes_gate(std::string_view text, std::uint32_t source, Diagnostics& diagnostics);

/// The text without a byte order mark at its start.
std::string_view without_byte_order_mark(std::string_view text);

}  // namespace heelrule
