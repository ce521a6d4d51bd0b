// Figures with their intervals below each other, on one scale.
#pragma once

#include <limits>
#include <string>
#include <vector>

#include "engine/drawing/svg.hpp"

namespace heelrule {

/// One figure. Where the interval is not known (not-a-number) the figure stands alone; where the
/// figure is not known its words stand alone.
struct IntervalRow {
  std::string name;
  double value = 0;
  double low = std::numeric_limits<double>::quiet_NaN();
  double high = std::numeric_limits<double>::quiet_NaN();
  std::string
      words;  ///< the figure and its interval as printed at the right: `0.49 (0.39 to 0.59)`
  bool is_heading = false;  ///< a name alone, above the rows that follow
};

/// From `from` to `to`, with a line at each of `strokes`. An interval that reaches further ends in
/// an arrow.
struct IntervalRows {
  std::string id;  ///< see PictureWords
  std::string title;
  double from = 0;
  double to = 1;
  std::vector<double> strokes;
  std::vector<IntervalRow> rows;
};

/// The rows as an SVG element, as wide as there is room, with a text equivalent: every name with
/// its words.
std::string draw(const IntervalRows& picture);

}  // namespace heelrule
