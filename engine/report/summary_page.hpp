// Many graded records on one page, with a link to the page of each.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/report/graded_page.hpp"

namespace heelrule {

/// A record, and the name of the file beside this one that holds its page.
struct SummaryEntry {
  const GradedRecord& record;
  std::string file;
};

/// The page: who must see a practitioner first, how many got each grade, a table of all records in
/// their order, which rules failed most often, and the usual cautions.
std::string summary_page(const Program& program, const std::vector<SummaryEntry>& entries,
                         const PageWishes& wishes);

}  // namespace heelrule
