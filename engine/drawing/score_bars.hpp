// A score part by part: how much of each was earned, and how far it can still reach.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace heelrule {

/// One part of a score. All in points, 0 to 100.
struct ScoreBar {
  std::string name;
  std::optional<double> points;  ///< nothing: none of it was seen
  double lowest = 0;             ///< what it can still come to
  double highest = 100;
  std::string words;    ///< as printed beside it: `75.0 of 100`
  bool is_sum = false;  ///< of all the others: drawn heavier
};

/// Where a grade begins.
struct ScoreMark {
  double from = 0;
  std::string name;
};

struct ScoreBars {
  std::string id;  ///< see PictureWords
  std::string title;
  std::vector<ScoreBar> bars;
  std::vector<ScoreMark> marks;  ///< best first; drawn under the bar of the sum
};

/// The bars as an SVG element, as wide as there is room (from 300 pixels on no word runs into
/// another). What was earned is solid, what is still open is hatched up to a stroke; neither needs
/// colour. With a text equivalent: each part with its words.
std::string draw(const ScoreBars& bars);

}  // namespace heelrule
