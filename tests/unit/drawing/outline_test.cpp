#include "engine/drawing/outline.hpp"

#include <algorithm>
#include <catch2/catch.hpp>

namespace heelrule {
namespace {

struct Extent {
  double least_x = 1e9, most_x = -1e9, least_y = 1e9, most_y = -1e9;
  double inner_most_at = 0;  // how far forward the place lies that reaches farthest to the right
};

// As SVG draws the curve: each piece a cubic whose ends lean as their neighbours lie (Catmull and
// Rom), walked along in 100 steps.
Extent drawn(const std::vector<Point>& points) {
  Extent extent;
  const std::size_t count = points.size();
  for (std::size_t i = 0; i < count; ++i) {
    const Point p0 = points[(i + count - 1) % count];
    const Point p1 = points[i];
    const Point p2 = points[(i + 1) % count];
    const Point p3 = points[(i + 2) % count];
    for (int step = 0; step < 100; ++step) {
      const double t = step / 100.0;
      const auto at = [t](double a, double b, double c, double d) {
        return 0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t * t +
                      (3 * b - a - 3 * c + d) * t * t * t);
      };
      const double x = at(p0.x, p1.x, p2.x, p3.x);
      const double y = at(p0.y, p1.y, p2.y, p3.y);
      extent.inner_most_at = x > extent.most_x ? y : extent.inner_most_at;
      extent.least_x = std::min(extent.least_x, x);
      extent.most_x = std::max(extent.most_x, x);
      extent.least_y = std::min(extent.least_y, y);
      extent.most_y = std::max(extent.most_y, y);
    }
  }
  return extent;
}

TEST_CASE("an outline is as long and as wide as the foot, and widest inward at its joint") {
  for (const FootForm& form : {FootForm{243, 94.3, 180}, FootForm{178.3, 69, 131},
                               FootForm{300, 88, 228}, FootForm{120, 56, 86}}) {
    for (const auto& points :
         {foot_outline(form, BigToe::to_the_right), insole_outline(form, BigToe::to_the_right)}) {
      const Extent extent = drawn(points);
      CHECK(extent.least_y == Approx(0).margin(0.1));
      CHECK(extent.most_y == Approx(form.length).margin(0.1));
      CHECK(extent.most_x - extent.least_x == Approx(form.width).margin(0.1));
      CHECK(extent.most_x == Approx(-extent.least_x).margin(0.1));
      CHECK(extent.inner_most_at == Approx(form.ball_length).margin(0.03 * form.length));
    }
  }
}

TEST_CASE("a left foot is a right foot in a mirror") {
  const FootForm form{243, 94.3, 180};
  const auto left = foot_outline(form, BigToe::to_the_right);
  const auto right = foot_outline(form, BigToe::to_the_left);
  REQUIRE(left.size() == right.size());
  for (std::size_t i = 0; i < left.size(); ++i) {
    CHECK(left[i].x == -right[i].x);
    CHECK(left[i].y == right[i].y);
  }
}

TEST_CASE(
    "a joint that was not measured, or cannot be there, lies where it usually does or nearly") {
  const auto widest = [](double ball_length) {
    return drawn(foot_outline({250, 95, ball_length}, BigToe::to_the_right)).inner_most_at;
  };
  CHECK(widest(0) == Approx(0.74 * 250).margin(5));
  CHECK(widest(249) == Approx(0.9 * 250).margin(5));
  CHECK(widest(20) == Approx(0.5 * 250).margin(5));
}

}  // namespace
}  // namespace heelrule
