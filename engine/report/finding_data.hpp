// Findings as entries of a page, each with its picture.
#pragma once

#include "engine/report/page_data.hpp"
#include "engine/report/report_subject.hpp"

namespace heelrule {

/// Adds `groups`, what failed and what passed in part, each with its heading and its `findings`;
/// the lists `passed`, also by themselves as `passed_measure` and `passed_level`, and `not_seen`;
/// and what does not apply as a sentence. All in the order of the rules. Each finding says what was
/// read, what it earns, and why; measures have their ruler as `picture`.
void add_findings(const ReportSubject& subject, PageData& data);

}  // namespace heelrule
