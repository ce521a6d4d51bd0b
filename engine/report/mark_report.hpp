// Marks: as text, and as JSON.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/report/mark_words.hpp"

namespace heelrule {

/// Rises when a key of the JSON changes its meaning or goes.
constexpr int mark_json_version = 1;

/// One object for all records, ended with a line feed; described in mark.schema.json. All stories
/// have the same program, marking rules and reference. Precondition: there is one.
std::string mark_json(std::span<const MarkStory> stories);

/// A page of text for each record, and after several one line for each.
std::string mark_text(std::span<const MarkStory> stories, bool colour);

}  // namespace heelrule
