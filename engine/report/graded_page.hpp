// One graded record as an HTML page.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "engine/quantity/parsed.hpp"
#include "engine/report/report_reader.hpp"
#include "engine/report/report_subject.hpp"
#include "engine/report/school_mark.hpp"
#include "engine/report/school_template.hpp"

namespace heelrule {

/// How a page is made, beyond what it is about.
struct PageWishes {
  std::span<const std::string> languages;  ///< the reader's choice, first choice first
  std::optional<SchoolMark> mark;
  ReportReader reader = ReportReader::assessor;
  std::optional<SchoolTemplate> body;  ///< in place of ours for this reader
};

/// The whole page: one file that holds its style and pictures, runs no script and asks for nothing
/// from anywhere. What a practitioner must see first comes before the body, and the cautions after
/// it, whatever fills the body. `earlier`, of the same client or pair, may be null. A problem where
/// a school's template cannot be filled, or makes a body that could take more than its place.
Parsed<std::string> graded_page(const Program& program, const GradedRecord& record,
                                const GradedRecord* earlier, const PageWishes& wishes);

}  // namespace heelrule
