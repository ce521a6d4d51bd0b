// The names that templates of graded pages are filled with.
#pragma once

#include "engine/report/page_data.hpp"
#include "engine/report/report_subject.hpp"

namespace heelrule {

/// All that a page can say of a record, by the names that examples/own-page/README.md lists. What
/// waits for a practitioner is not among them, and what must not be cut off has its own place (see
/// `first_part` and `last_part`).
PageData report_data(const ReportSubject& subject);

}  // namespace heelrule
