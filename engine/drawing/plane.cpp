#include "engine/drawing/plane.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/quantity/decimal.hpp"

namespace heelrule {
namespace {

constexpr double width = 400;
constexpr double height = 230;
constexpr double left = 34;
constexpr double right = 92;  // room for the words of lines
constexpr double top = 16;
constexpr double bottom = 34;
constexpr double words_apart = 12;

std::string_view in_words(PlaneLineKind kind) {
  switch (kind) {
    case PlaneLineKind::main:
      return "line";
    case PlaneLineKind::limit:
      return "limit";
    case PlaneLineKind::thin:
      return "thin";
  }
  return "";
}

struct Reach {
  double from = HUGE_VAL;
  double to = -HUGE_VAL;

  void take(double value) {
    from = std::min(from, value);
    to = std::max(to, value);
  }
  // Room at either end; a reach of one number is widened.
  void widen() {
    if (!(from <= to)) {
      from = 0;
      to = 1;
    }
    const double room = to > from ? 0.06 * (to - from) : 1;
    from -= room;
    to += room;
  }
  double share(double value) const { return (value - from) / (to - from); }
};

class PlaneDrawing {
 public:
  explicit PlaneDrawing(const Plane& plane) : plane_(plane) {
    for (const PlanePoint& point : plane.points) {
      take(point.at);
    }
    for (const PlaneLine& line : plane.lines) {
      for (const Point& point : line.through) {
        take(point);
      }
    }
    across_.widen();
    up_.widen();
  }

  std::string draw() const {
    SvgWriter svg =
        SvgWriter::to_scale({plane_.id, plane_.title, plane_.description}, width, height, "plane");
    draw_axes(svg);
    for (const PlaneLine& line : plane_.lines) {
      std::vector<Point> points;
      points.reserve(line.through.size());
      for (const Point& point : line.through) {
        points.push_back(placed(point));
      }
      svg.shape({across(0), 0}, points, false, in_words(line.kind));
    }
    draw_line_words(svg);
    for (const PlanePoint& point : plane_.points) {
      const Point at = placed(point.at);
      if (point.mark == PointMark::far) {
        svg.box({heelrule::across(at.x - 2.6), at.y - 2.6}, heelrule::across(5.2), 5.2, "far");
      } else {
        svg.circle(at, 2.4, "point");
      }
    }
    return svg.take();
  }

 private:
  void take(Point point) {
    across_.take(point.x);
    up_.take(point.y);
  }

  static Across across(double units) { return heelrule::across(units); }

  Point placed(Point point) const {
    return {left + across_.share(point.x) * (width - left - right),
            height - bottom - up_.share(point.y) * (height - top - bottom)};
  }

  void draw_axes(SvgWriter& svg) const {
    for (const double stroke : axis_strokes(up_.from, up_.to)) {
      const double down = placed({across_.from, stroke}).y;
      svg.line({across(left), down}, {across(width - right), down}, "grid");
      svg.text({across(left - 4), down + 3}, with_places(stroke, 4), Anchor::end, "stroke-words");
    }
    if (plane_.places.empty()) {
      for (const double stroke : axis_strokes(across_.from, across_.to)) {
        draw_stroke_across(svg, stroke, with_places(stroke, 4));
      }
    }
    for (std::size_t i = 0; i < plane_.places.size(); ++i) {
      draw_stroke_across(svg, static_cast<double>(i + 1), plane_.places[i]);
    }
    svg.line({across(left), height - bottom}, {across(width - right), height - bottom}, "axis");
    svg.line({across(left), top}, {across(left), height - bottom}, "axis");
    svg.text({across(left), 9}, plane_.up, Anchor::start, "axis-words");
    svg.text({across(width - right), height - 8}, plane_.across, Anchor::end, "axis-words");
  }

  void draw_stroke_across(SvgWriter& svg, double stroke, std::string_view words) const {
    const double at = placed({stroke, up_.from}).x;
    svg.line({across(at), height - bottom}, {across(at), height - bottom + 3}, "axis");
    svg.text({across(at), height - bottom + 12}, words, Anchor::middle, "stroke-words");
  }

  // At the right end of their lines, moved down where they would run into each other.
  void draw_line_words(SvgWriter& svg) const {
    struct Words {
      double down = 0;
      std::string_view words;
    };
    std::vector<Words> all;
    for (const PlaneLine& line : plane_.lines) {
      if (!line.words.empty() && !line.through.empty()) {
        all.push_back({placed(line.through.back()).y + 3, line.words});
      }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Words& a, const Words& b) { return a.down < b.down; });
    double lowest = -HUGE_VAL;
    for (const Words& one : all) {
      lowest = std::max(one.down, lowest + words_apart);
      svg.text({across(width - right + 4), lowest}, one.words, Anchor::start, "line-words");
    }
  }

  const Plane& plane_;
  Reach across_;
  Reach up_;
};

}  // namespace

std::vector<double> axis_strokes(double from, double to) {
  constexpr double most_strokes = 7;
  const double length = to - from;
  double step = std::pow(10, std::floor(std::log10(length / most_strokes)));
  for (const double factor : {2.0, 2.5, 2.0}) {
    if (std::floor(to / step) - std::ceil(from / step) + 1 <= most_strokes) {
      break;
    }
    step *= factor;
  }
  std::vector<double> strokes;
  for (double i = std::ceil(from / step - 1e-9); i * step <= to + step * 1e-9; ++i) {
    strokes.push_back(i == 0 ? 0 : i * step);
  }
  return strokes;
}

std::string draw(const Plane& plane) { return PlaneDrawing(plane).draw(); }

}  // namespace heelrule
