// The pictures of a graded page that are of the whole pair: feet, soles, scores.
#pragma once

#include <string>

#include "engine/report/report_subject.hpp"

namespace heelrule {

/// Both feet on their insoles, from the traits `foot_length`, `foot_width`, `ball_length`, the same
/// `_seated`, `insole_length`, `insole_width`, `insole_ball_length`, `toe_allowance` and
/// `width_allowance`. Empty unless the length and width of a standing foot are known.
std::string feet_picture(const ReportSubject& subject);

/// The same with no words but the space in front of the toes.
std::string plain_feet_picture(const ReportSubject& subject);

/// Each sole from the side, or one for both where they are alike; from `heel_thickness`,
/// `fore_thickness`, `heel_to_ball`, `toe_spring`, `bend_length`, `insole_length`, `sole_rise` and
/// `heel_pitch`. Empty unless the first three are known.
std::string sole_picture(const ReportSubject& subject);

/// The score and its sections as bars.
std::string score_picture(const ReportSubject& subject);

}  // namespace heelrule
