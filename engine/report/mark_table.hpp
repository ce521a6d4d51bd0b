// Marks as a table, for the mark book.
#pragma once

#include <span>
#include <string>

#include "engine/report/mark_words.hpp"

namespace heelrule {

/// A row of names and a row for each record, comma-separated (RFC 4180, lines end in CR LF as it
/// has them). Texts that a spreadsheet would take for formulas get an apostrophe in front;
/// numbers that are not known are empty cells.
std::string mark_table(std::span<const MarkStory> stories);

}  // namespace heelrule
