// Everything that was recorded, and what was worked out from it, as tables of a page.
#pragma once

#include "engine/report/page_data.hpp"
#include "engine/report/report_subject.hpp"

namespace heelrule {

/// Adds the list `readings`: each trait that the record holds, question by question, with its
/// sides, the doubt of one reading, whether a formula reads it, and notes; and the list
/// `worked_out`: each trait that a rule reads through a formula, with the formula and its values.
void add_readings(const ReportSubject& subject, PageData& data);

}  // namespace heelrule
