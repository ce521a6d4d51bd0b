// Pass marks: as text, and as JSON.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/agreement/pass_mark.hpp"

namespace heelrule {

/// Rises when a key of the JSON changes its meaning or goes.
constexpr int pass_json_version = 1;

/// `borderline_regression`; and `Borderline regression`.
std::string_view key_of(PassMethod method);
std::string_view title_of(PassMethod method);

/// `61.5`; a dash for what is not known.
std::string points_words(double value);

/// How a pass mark came about, in a sentence.
std::string pass_mark_words(const PassSheet& sheet, const PassMarks& marks, const PassMark& mark);

/// What must be said of all of them: that they differ, that students are few.
std::vector<std::string> pass_remarks(const PassSheet& sheet, const PassMarks& marks);

/// One object, ended with a line feed; described in pass.schema.json. What cannot be worked out,
/// and what the sheet has nothing for, is null.
std::string pass_json(const PassSheet& sheet, const PassMarks& marks);

std::string pass_text(const PassSheet& sheet, const PassMarks& marks, bool colour);

}  // namespace heelrule
