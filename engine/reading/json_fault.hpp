// Where a text stops being JSON.
#pragma once

#include <string_view>

#include "engine/source/span.hpp"

namespace heelrule {

/// The place of the first fault in a text that a JSON parser has refused without saying where. The
/// end of the text where nothing before it is wrong: there something is missing.
Span json_fault(std::string_view text, std::uint32_t source);

}  // namespace heelrule
