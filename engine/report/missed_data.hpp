// What a student did not see, and how to take it next time.
#pragma once

#include "engine/report/page_data.hpp"
#include "engine/report/report_subject.hpp"

namespace heelrule {

/// Adds the list `missed`: each trait that a finding lacks, weightiest first, with its side, the
/// reason that the record gives, how to take it, what is usual to find, and how much of the score
/// waits for it.
void add_missed(const ReportSubject& subject, PageData& data);

}  // namespace heelrule
