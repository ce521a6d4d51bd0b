// Why a text is no YAML, in words for the person who wrote it.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "engine/quantity/parsed.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

/// What is wrong with a text that a YAML parser has refused at the byte `mark`, saying `said`. A
/// parser notices an open quote or bracket only where things no longer fit, often many lines below,
/// so the opening one is looked for, and named, first.
Located<Problem> yaml_fault(std::string_view text, std::uint32_t source, std::size_t mark,
                            std::string_view said);

/// The first quote or bracket that is opened and never closed, if there is one. It goes by the
/// look of the text, so it is asked only once a text is known to be wrong.
std::optional<Located<Problem>> never_closed(std::string_view text, std::uint32_t source);

}  // namespace heelrule
