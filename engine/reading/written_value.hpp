// Values on one line, as the cells of a table and typed answers have them.
#pragma once

#include <string>
#include <string_view>

#include "engine/model/trait.hpp"
#include "engine/reading/tree.hpp"

namespace heelrule {

/// The tree of a value that is written on one line, for `read_value`. Repeats of a measure and
/// fibres are parted by `separator`.
///
///     `246; 247; 246 mm`           ->  [246, 247, 246 mm]
///     `cotton 80 %; elastane 20 %`  ->  {cotton: 80 %, elastane: 20 %}
Node written_value(const Trait& trait, std::string_view line, std::string_view separator,
                   Span where);

/// A value of a record on one line: `246, 247, 246 mm`, `cotton 80 %, elastane 20 %`,
/// `not seen (sole was wet)`, `firm (note: creased)`.
std::string written_words(const Node& value);

}  // namespace heelrule
