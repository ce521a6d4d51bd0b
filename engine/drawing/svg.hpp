// Pictures as SVG elements for the inside of an HTML page.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace heelrule {

/// A distance across a picture: in its own units, or in percent of its width.
struct Across {
  double value = 0;
  bool in_percent = false;
};

constexpr Across across(double units) { return {units, false}; }
constexpr Across percent(double share) { return {share, true}; }

/// A place in a picture; `down` counts from its upper edge.
struct Place {
  Across across;
  double down = 0;
};

/// A place of a picture that is drawn to scale.
struct Point {
  double x = 0;
  double y = 0;
};

/// Which end of a piece of text stands at its place.
enum class Anchor { start, middle, end };

/// What a picture says to those who do not see it.
struct PictureWords {
  std::string id;  ///< of ASCII letters, digits and `-`; no other picture of the page has it
  std::string title;
  std::string description;
};

/// A number as SVG reads it: three decimals at most, never an exponent, the same in every locale.
/// What is not finite, or beyond a million, is drawn at 0: nothing that was measured comes to that.
std::string svg_number(double value);

/// How large the unit of a picture to scale is drawn at most: so all of a page are of one scale.
constexpr double pixels_a_unit = 1.5;

/// Writes one picture. `kind` is always a word of ours, by which the style of the page finds the
/// element (`drawing_style`); every text that comes from people is escaped here.
class SvgWriter {
 public:
  /// A picture to scale, in units of its own, each `pixels_a_unit` large; the page makes it smaller
  /// where it has less room.
  static SvgWriter to_scale(const PictureWords& words, double width, double height,
                            std::string_view kind);

  /// A picture as wide as the page has room for, and `height` pixels high. Its text keeps its size;
  /// everything across is in percent.
  static SvgWriter stretching(const PictureWords& words, double height, std::string_view kind);

  void line(Place from, Place to, std::string_view kind);
  void box(Place corner, Across width, double height, std::string_view kind);
  void circle(Point centre, double radius, std::string_view kind);
  void text(Place at, std::string_view words, Anchor anchor, std::string_view kind);

  /// Straight lines through all points; `closed` leads back to the first. Around `origin`.
  void shape(Place origin, std::span<const Point> points, bool closed, std::string_view kind);

  /// A smooth line through all points (Catmull and Rom, as cubic curves: each tangent is half the
  /// way between the neighbours).
  void curve(std::span<const Point> points, bool closed, std::string_view kind);

  /// The finished element. Nothing may be added after.
  std::string take();

 private:
  SvgWriter(const PictureWords& words, std::string_view sizes, std::string_view kind);

  std::string picture_;
};

/// The hatchings that pictures are filled with: to stand once in each page that has pictures.
std::string_view picture_patterns();

/// The style of all pictures, as CSS.
std::string_view drawing_style();

}  // namespace heelrule
