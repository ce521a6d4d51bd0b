// The outlines of a foot and of an insole from above, built from a few measures.
#pragma once

#include <vector>

#include "engine/drawing/svg.hpp"

namespace heelrule {

/// On which side of the outline the big toe lies, looked at from above with the toes up.
enum class BigToe { to_the_left, to_the_right };

/// A foot in mm. Only these three were measured; all else is the usual form of a foot.
struct FootForm {
  double length = 0;       ///< heel to longest toe; above 0
  double width = 0;        ///< across the ball, between the verticals at both joints; above 0
  double ball_length = 0;  ///< heel to big-toe joint; 0: not known, and taken as 74 % of the length
                           ///< (ANSUR II survey of 2012: 74.1 % of men, 73.9 % of women)
};

/// Points of a closed curve (`SvgWriter::curve`) round the foot, in mm: `y` from the heel end (0)
/// forward, `x` across, 0 halfway between the two verticals at the ball. The curve is as long and
/// as wide as was measured, to a tenth of a millimetre, and reaches farthest inward beside the
/// joint of the big toe.
std::vector<Point> foot_outline(const FootForm& form, BigToe big_toe);

/// The same of an insole, which is rounder in front. `ball_length` is that of its widest place.
std::vector<Point> insole_outline(const FootForm& form, BigToe big_toe);

}  // namespace heelrule
