// Words side by side, moved to further rows where they would run into each other.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "engine/drawing/svg.hpp"

namespace heelrule {

/// A label of a picture that stretches: wanted with its middle at `at` percent of the width.
struct Label {
  double at = 0;
  double width = 0;  ///< in pixels, see `label_width`
};

/// Where a label went.
struct LabelPlace {
  std::size_t row = 0;
  Anchor anchor = Anchor::middle;  ///< start or end where the middle would run over the edge
  double at = 0;                   ///< in percent
};

/// Rows for labels of a picture that is at least `narrowest` pixels wide. A label takes the first
/// row in which it touches none before it; in a wider picture they only move apart.
std::vector<LabelPlace> in_rows(const std::vector<Label>& labels, double narrowest);

/// How many rows were taken.
std::size_t row_count(const std::vector<LabelPlace>& places);

/// About how wide a text of `size` pixels is drawn: on the safe side for the sans-serif letters of
/// the page (0.58 of the size for each character; from memory, a digit has 0.556).
double label_width(std::string_view words, double size);

}  // namespace heelrule
