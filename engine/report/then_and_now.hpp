// Two records of one client or one pair, side by side.
#pragma once

#include "engine/report/page_data.hpp"
#include "engine/report/report_subject.hpp"

namespace heelrule {

/// Adds, where there is an earlier record: both dates and grades, and why the grade moved in a
/// sentence; `moved`, the findings that were judged both times and came out otherwise, what lost
/// most first; `feet_then` and `shoes_then`, each measure that both records hold, with its change;
/// and `grew`, by how much each foot is longer.
void add_then_and_now(const ReportSubject& subject, PageData& data);

}  // namespace heelrule
