// Quoted texts as they stand in a YAML file.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace heelrule {

/// How many bytes the quoted text at the start of `text` takes, with both quotes. Nothing where it
/// is never closed. Precondition: `text` begins with `"` or `'`.
///
///     quoted_length("'it''s' so")  ->  7
std::optional<std::size_t> quoted_length(std::string_view text);

}  // namespace heelrule
