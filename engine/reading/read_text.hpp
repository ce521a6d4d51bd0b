// Human text: one wording, or a map of wordings by language.
#pragma once

#include <string_view>

#include "engine/model/rule.hpp"
#include "engine/model/text.hpp"
#include "engine/reading/map_reader.hpp"

namespace heelrule {

/// A text, or a map from language tag (BCP 47) to text. Reported: a tag that is none, an empty
/// text.
Text read_text(const Node& node, std::string_view key, Diagnostics& diagnostics);

/// The text of a key; empty if it is not there.
Text take_text(MapReader& map, std::string_view key);

/// The text of a key that must be there.
Text require_text(MapReader& map, std::string_view key, std::string_view sample);

/// Whether `tag` has the shape of a language tag: `en`, `pt-BR`, `zh-Hant`. Subtags are not looked
/// up.
bool is_language_tag(std::string_view tag);

}  // namespace heelrule
