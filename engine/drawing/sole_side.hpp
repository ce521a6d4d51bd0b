// The sole of a shoe from the side, to scale.
#pragma once

#include <optional>
#include <string>

namespace heelrule {

/// A sole as it was measured, in mm, and the words that are printed with each measure.
struct SolePicture {
  std::string id;  ///< see PictureWords
  std::string title;
  double heel_thickness = 0;  ///< 0 or more
  double fore_thickness = 0;  ///< 0 or more
  double heel_to_ball = 0;    ///< between the places of these two; above 0
  std::optional<double> toe_spring;
  std::optional<double> bend_length;    ///< heel end to the ball; places the two measures
  std::optional<double> inside_length;  ///< else the ball is taken to lie at 74 % of the length
  std::string heel_words;               ///< `heel 27 mm`
  std::string fore_words;
  std::string distance_words;
  std::string spring_words;
  std::string slope_words;  ///< `rise 10 mm, slope 3.3°`
};

/// The picture as an SVG element in units of a millimetre, the toe on the right, standing on the
/// floor. Thicknesses, their distance and the spring are where they were measured; the line from
/// one to the other is suggested. With a text equivalent: all the words.
std::string draw(const SolePicture& sole);

}  // namespace heelrule
