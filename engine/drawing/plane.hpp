// Points and lines over two axes.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/drawing/svg.hpp"

namespace heelrule {

/// How a point is marked: by its shape, so that paper in black and white says the same.
enum class PointMark : std::uint8_t {
  usual,  ///< an open circle
  far,    ///< a filled square: one that is spoken of
};

struct PlanePoint {
  Point at;
  PointMark mark = PointMark::usual;
};

enum class PlaneLineKind : std::uint8_t {
  main,   ///< heavy
  limit,  ///< broken
  thin,
};

/// Straight from point to point.
struct PlaneLine {
  std::vector<Point> through;
  PlaneLineKind kind = PlaneLineKind::main;
  std::string words;  ///< printed at its right end; may be empty
};

struct Plane {
  std::string id;  ///< see PictureWords
  std::string title;
  std::string description;  ///< what the picture shows, in words, with its figures
  std::string across;       ///< words of the axes
  std::string up;
  std::vector<std::string> places{};  ///< where the axis across has names: those of 1, 2, 3 …
  std::vector<PlanePoint> points;
  std::vector<PlaneLine> lines;
};

/// The strokes of an axis from `from` to `to`: multiples of 1, 2 or 5 times a power of ten, at most
/// seven. Precondition: `from` < `to`, both finite.
///
///     axis_strokes(0, 100)  ->  0, 20, 40, 60, 80, 100
std::vector<double> axis_strokes(double from, double to);

/// The plane as an SVG element to scale. Everything in it is reached.
std::string draw(const Plane& plane);

}  // namespace heelrule
