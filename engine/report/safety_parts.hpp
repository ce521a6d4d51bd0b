// The parts of a graded page that no template and no option can leave out.
#pragma once

#include <string>
#include <vector>

#include "engine/report/report_subject.hpp"

namespace heelrule {

/// Markup that comes before all else: referrals, safety questions without an answer, and those that
/// were answered with no where there is nothing else to say. Empty for a rule set without safety
/// questions and without a referral.
std::string first_part(const ReportSubject& subject);

/// Markup that comes last: the cautions of what was found, and the usual ones.
std::string last_part(const ReportSubject& subject);

/// The same of a page that is about no single record: the usual cautions alone.
std::string last_part(const std::vector<std::string>& usual_cautions);

}  // namespace heelrule
