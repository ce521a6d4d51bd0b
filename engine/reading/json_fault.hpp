// Where a text stops being JSON, and why.
#pragma once

#include <optional>
#include <string_view>

#include "engine/quantity/parsed.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

/// The first fault of a text against the grammar of RFC 8259, or against TreeLimits::depth; nothing
/// where there is none. Whole numbers of more than 18 digits and powers of ten of three digits are
/// faults too, since no reading has them.
///
///     {"found": {"foot_length": 243 mm}}
///                                   ^  `,` or `}` is due here
std::optional<Located<Problem>> json_fault(std::string_view text, std::uint32_t source);

}  // namespace heelrule
