#include "engine/drawing/svg.hpp"

#include <array>
#include <catch2/catch.hpp>
#include <limits>

namespace heelrule {
namespace {

TEST_CASE(
    "a number is written with three decimals at most, and never as one that SVG cannot read") {
  CHECK(svg_number(12.5) == "12.5");
  CHECK(svg_number(-0.0001) == "0");
  CHECK(svg_number(1.0 / 3) == "0.333");
  CHECK(svg_number(std::numeric_limits<double>::infinity()) == "0");
  CHECK(svg_number(std::numeric_limits<double>::quiet_NaN()) == "0");
  CHECK(svg_number(1e7) == "0");
}

TEST_CASE("a picture names itself for those who do not see it, with its words escaped") {
  SvgWriter svg = SvgWriter::to_scale({"feet", "Feet & shoes", "<left>"}, 300, 200, "feet");
  CHECK(svg.take() ==
        "<svg class=\"picture feet\" viewBox=\"0 0 300 200\" width=\"450\" height=\"300\" "
        "role=\"img\" "
        "aria-labelledby=\"feet-title feet-words\"><title id=\"feet-title\">Feet &amp; "
        "shoes</title><desc id=\"feet-words\">&lt;left&gt;</desc></svg>");
}

TEST_CASE("elements stand in the order in which they were drawn") {
  SvgWriter svg = SvgWriter::stretching({"a", "", ""}, 40, "ruler");
  svg.line({percent(10), 1}, {percent(20), 2.5}, "stroke");
  svg.text({percent(50), 30}, "a<b", Anchor::middle, "name");
  const std::string picture = svg.take();
  CHECK(picture.find(R"(width="100%" height="40")") != std::string::npos);
  CHECK(picture.find(R"(<line class="stroke" x1="10%" y1="1" x2="20%" y2="2.5"/>)"
                     R"(<text class="name" x="50%" y="30" text-anchor="middle">a&lt;b</text>)") !=
        std::string::npos);
}

// The cubic of a uniform Catmull-Rom spline: its inner points lie a sixth of the way between the
// neighbours beyond the ends (Catmull and Rom 1974, in Bézier form; from memory).
TEST_CASE("a curve goes through its points, with tangents along their neighbours") {
  SvgWriter svg = SvgWriter::to_scale({"a", "", ""}, 10, 10, "x");
  const std::array<Point, 4> square{{{0, 0}, {6, 0}, {6, 6}, {0, 6}}};
  svg.curve(square, true, "line");
  CHECK(svg.take().find("d=\"M0 0 C1 -1 5 -1 6 0 C7 1 7 5 6 6 C5 7 1 7 0 6 C-1 5 -1 1 0 0Z\"") !=
        std::string::npos);
}

}  // namespace
}  // namespace heelrule
