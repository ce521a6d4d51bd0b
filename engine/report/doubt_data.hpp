// How sure the grade of a page is.
#pragma once

#include "engine/report/page_data.hpp"
#include "engine/report/report_subject.hpp"

namespace heelrule {

/// Adds what is said of the doubt of the grade: `sure`, `chance_picture`, `chances` where they
/// depend on what was not seen, `take_again` with how to take it, `fewest`, `within_doubt`,
/// `guarded` and `better`; and for a client `is_close`, `measure_again`, and `close_chance` where
/// the rule set shows the score to clients. Nothing where readings are taken as they stand.
void add_doubt(const ReportSubject& subject, PageData& data);

}  // namespace heelrule
