// A ruler to mark a reading on by hand.
#pragma once

#include <string>

#include "engine/drawing/ruler.hpp"

namespace heelrule {

/// All numbers in one unit, finite. Precondition: `from` is below `to`.
struct BlankRuler {
  std::string id;     ///< see PictureWords
  std::string title;  ///< `Length of the standing foot`
  RulerReach reach;   ///< the stretch that is drawn
  std::string unit;   ///< printed behind the last number; empty for a count
};

/// The ruler as an SVG element, as wide as there is room and 24 pixels high: strokes as those of
/// `stroke_step`, every fifth of them longer and with its number.
std::string draw(const BlankRuler& ruler);

}  // namespace heelrule
