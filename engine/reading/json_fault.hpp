// Where a text stops being JSON, and why.
#pragma once

#include <string_view>

#include "engine/quantity/parsed.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

/// The first fault of a text against the grammar of RFC 8259, or against TreeLimits::depth: for a
/// text that a parser has refused without saying where. Precondition: there is one.
///
///     {"found": {"foot_length": 243 mm}}
///                                   ^  `,` or `}` is due here
Located<Problem> json_fault(std::string_view text, std::uint32_t source);

}  // namespace heelrule
