// A measured trait as a ruler: the bands of the house on it, and each reading as a notch.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/drawing/svg.hpp"

namespace heelrule {

/// How a band is filled: without colour, so that paper in black and white says the same.
enum class BandFill : std::uint8_t {
  open,    ///< white, in a heavy frame: what is wanted
  sparse,  ///< few lines: some credit
  dense,   ///< many lines: none
};

/// A stretch of the ruler, lowest first.
struct RulerBand {
  std::string name;  ///< a word or two, printed under it: `right`
  BandFill fill = BandFill::open;
  std::optional<double> cut;  ///< its upper end; nothing: the last band
  std::string cut_words;      ///< as printed under the cut: `15 mm`
  std::string words;          ///< the whole band in words: `right (10 mm to 15 mm)`
};

/// A reading. It is as wide as it is doubtful: from `value - doubt` to `value + doubt`.
struct RulerNotch {
  double value = 0;
  double doubt = 0;      ///< expanded uncertainty; 0: none, and drawn as a line
  std::string words;     ///< as printed above it: `left 14 mm`
  bool earlier = false;  ///< of an earlier inspection: drawn faintly
};

/// All numbers in one unit, finite. Precondition: a band, and each but the last has a cut above
/// that of the one before.
struct Ruler {
  std::string id;     ///< see PictureWords
  std::string title;  ///< `Space in front of the toes`
  std::vector<RulerBand> bands;
  std::vector<RulerNotch> notches;
};

/// The stretch of numbers that is drawn.
struct RulerReach {
  double from = 0;
  double to = 0;
};

/// All cuts and readings with room at either end, and none below 0 where nothing is below 0. A
/// reading that lies more than twice the stretch of the cuts away from them is not reached: it is
/// drawn at the end, with an arrow.
RulerReach reach(const Ruler& ruler);

/// How far apart the strokes of a ruler are: 1, 2 or 5 times a power of ten, so that there are
/// `most` of them or fewer.
double stroke_step(const RulerReach& reach, double most = 30);

/// The ruler as an SVG element, as wide as there is room (from 280 pixels on no name runs into
/// another, as far as letters are no wider than is usual), with a text equivalent: each reading,
/// its doubt, and all bands.
std::string draw(const Ruler& ruler);

/// The same for a row of a table: half as high, from 150 pixels on, with the numbers of the cuts
/// and no other words, for the row has them. The text equivalent is that of `draw`.
std::string draw_small(const Ruler& ruler);

}  // namespace heelrule
