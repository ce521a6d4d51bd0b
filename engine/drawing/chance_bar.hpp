// How likely each of several outcomes is: one bar, shared out.
#pragma once

#include <string>
#include <vector>

namespace heelrule {

/// One outcome.
struct ChancePart {
  double chance = 0;       ///< 0 to 1; all of a bar add up to 1
  std::string words;       ///< as printed under its part: `usable 83 %`
  bool is_chosen = false;  ///< the one that was found: solid
};

struct ChanceBar {
  std::string id;  ///< see PictureWords
  std::string title;
  std::vector<ChancePart> parts;  ///< from left to right; those of no chance are left out
};

/// The bar as an SVG element, as wide as there is room (from 280 pixels on no word runs into
/// another). Parts tell themselves apart by what fills them, without colour. With a text
/// equivalent: the words of all parts.
std::string draw(const ChanceBar& bar);

}  // namespace heelrule
