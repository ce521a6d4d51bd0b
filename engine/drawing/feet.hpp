// Both feet on their insoles, from above and to scale.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/drawing/outline.hpp"

namespace heelrule {

/// One foot as it was measured, in mm, and the words that are printed with it.
struct FootPicture {
  std::string name;                     ///< `left foot`
  std::optional<FootForm> standing;     ///< solid
  std::optional<FootForm> seated;       ///< dashed
  std::optional<FootForm> insole;       ///< shaded
  std::optional<double> insole_length;  ///< where its width is not known: its front end alone
  std::string space_in_front;           ///< between toes and front end: `11.2 mm`
  std::string space_beside;             ///< of the insole beyond the foot, both sides together
  std::vector<std::string> rows;        ///< below it: `standing 243 × 94.3 mm`
};

struct FeetPicture {
  std::string id;  ///< see PictureWords
  std::string title;
  FootPicture left;
  FootPicture right;
};

/// The picture as an SVG element in units of a millimetre, toes up, the left foot on the left.
/// Heels are drawn level with the heel ends of the insoles, and each foot in the middle of its
/// insole: how the space beside it is shared was not measured. With a text equivalent: all words of
/// both feet.
std::string draw(const FeetPicture& feet);

}  // namespace heelrule
