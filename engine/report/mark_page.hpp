// Marks as pages: one for each student, and one about all of them.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/report/mark_words.hpp"

namespace heelrule {

/// The page of one record: the mark on a ruler, critical faults, the verdict beside the
/// reference's, what moved the score, and what to learn from, each measure on a ruler with its
/// tolerance. `place` is that of the record among those that were given.
std::string mark_page(const MarkStory& story, std::size_t place);

/// The page about all records: marks, and every question with how each student answered it.
/// `files` are the names of the students' pages, to which it links.
std::string mark_overview(std::span<const MarkStory> stories,
                          const std::vector<std::string>& files);

}  // namespace heelrule
