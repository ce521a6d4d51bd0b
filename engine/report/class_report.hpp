// How far a class agrees: as text, and as JSON.
#pragma once

#include <string>

#include "engine/report/class_words.hpp"

namespace heelrule {

/// Rises when a key of the JSON changes its meaning or goes.
constexpr int class_json_version = 1;

/// One object, ended with a line feed; described in class.schema.json. Figures are in the unit that
/// stands beside them; what cannot be worked out is null.
std::string class_json(const ClassStory& story);

/// Who stands apart, what confuses, what splits; then question by question.
std::string class_text(const ClassStory& story, bool colour);

}  // namespace heelrule
