#include "engine/drawing/plane.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("the strokes of an axis are round numbers, and few") {
  CHECK(axis_strokes(0, 100) == std::vector<double>{0, 20, 40, 60, 80, 100});
  CHECK(axis_strokes(-3.2, 3.4) == std::vector<double>{-3, -2, -1, 0, 1, 2, 3});
  CHECK(axis_strokes(0.94, 4.06) == std::vector<double>{1, 1.5, 2, 2.5, 3, 3.5, 4});
  CHECK(axis_strokes(236, 272) == std::vector<double>{240, 245, 250, 255, 260, 265, 270});
}

TEST_CASE("a plane shows every point and line, far points as squares, and says so in words") {
  Plane plane;
  plane.id = "p";
  plane.title = "Length <of> the foot";
  plane.description = "95 % of differences lie from -2 to 2 mm.";
  plane.points = {{{240, 1}, PointMark::usual}, {{250, -1}, PointMark::far}};
  plane.lines = {{{{240, 0}, {250, 0}}, PlaneLineKind::main, "no difference"}};
  const std::string drawn = draw(plane);
  CHECK(drawn.find("<circle class=\"point\"") != std::string::npos);
  CHECK(drawn.find("<rect class=\"far\"") != std::string::npos);
  CHECK(drawn.find("no difference</text>") != std::string::npos);
  CHECK(drawn.find("Length &lt;of&gt; the foot") != std::string::npos);
  CHECK(drawn.find("95 % of differences") != std::string::npos);
}

TEST_CASE("an axis that has names has them in place of numbers") {
  Plane plane;
  plane.id = "p";
  plane.places = {"poor", "fair"};
  plane.points = {{{1, 40}, PointMark::usual}, {{2, 60}, PointMark::usual}};
  const std::string drawn = draw(plane);
  CHECK(drawn.find(">poor</text>") < drawn.find(">fair</text>"));
  CHECK(drawn.find(">fair</text>") != std::string::npos);
  CHECK(drawn.find(">1.5</text>") == std::string::npos);
}

TEST_CASE("a plane with one point, or none, is drawn too") {
  Plane plane;
  plane.id = "p";
  CHECK(draw(plane).ends_with("</svg>"));
  plane.points = {{{240, 1}, PointMark::usual}};
  CHECK(draw(plane).find("nan") == std::string::npos);
}

}  // namespace
}  // namespace heelrule
