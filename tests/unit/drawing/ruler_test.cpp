#include "engine/drawing/ruler.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

Ruler toe_space(std::vector<RulerNotch> notches) {
  return {"toes",
          "Space for the toes",
          {{"short", BandFill::dense, 10, "10 mm", "short (below 10 mm)"},
           {"right", BandFill::open, 15, "15 mm", "right (10 mm to 15 mm)"},
           {"long", BandFill::sparse, {}, "", "long (above 15 mm)"}},
          std::move(notches)};
}

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

TEST_CASE("a ruler reaches over its cuts and readings, and not below 0 without need") {
  const RulerReach near = reach(toe_space({{12, 0, "12 mm", false}}));
  CHECK(near.from == Approx(8.25));
  CHECK(near.to == Approx(16.75));
  CHECK(reach(toe_space({{0.5, 0, "0.5 mm", false}})).from == 0);
  Ruler below = toe_space({{-2, 0, "-2 mm", false}});
  below.bands[0].cut = 2;
  CHECK(reach(below).from < -2);
}

TEST_CASE("a reading far away does not squash the bands") {
  const RulerReach far = reach(toe_space({{4000, 0, "4000 mm", false}}));
  CHECK(far.to == Approx(25.6));
  const std::string picture = draw(toe_space({{4000, 0, "4000 mm", false}}));
  CHECK(holds(picture, "M0 3 L0 13 L7 8"));
  CHECK(holds(picture, ">4000 mm</text>"));
}

TEST_CASE("a ruler without cuts reaches around its readings") {
  Ruler plain{"a", "A", {{"any", BandFill::open, {}, "", "any"}}, {{100, 0, "100", false}}};
  CHECK(reach(plain).from < 100);
  CHECK(reach(plain).to > 100);
}

TEST_CASE("strokes are 1, 2 or 5 times a power of ten apart, and 30 at most") {
  CHECK(stroke_step({0, 30}) == 1);
  CHECK(stroke_step({0, 31}) == 2);
  CHECK(stroke_step({0, 100}) == 5);
  CHECK(stroke_step({0, 2}) == Approx(0.1));
  CHECK(stroke_step({-1000, 1000}) == 100);
}

TEST_CASE("a reading is as wide as it is doubtful") {
  // From 8.25 to 16.75: 12 ± 0.85 mm is a tenth of the ruler either way.
  const std::string picture = draw(toe_space({{12.5, 0.85, "12.5 mm", false}}));
  CHECK(holds(picture, R"(<rect class="notch doubt" x="40%")"));
  CHECK(holds(picture, R"(width="20%")"));
  CHECK(!holds(draw(toe_space({{12.5, 0, "12.5 mm", false}})), "doubt"));
}

TEST_CASE("a ruler says in words what it shows") {
  const std::string picture =
      draw(toe_space({{12, 1, "left 12 mm", false}, {9, 1, "left 9 mm", true}}));
  CHECK(holds(picture, "<title id=\"toes-title\">Space for the toes</title>"));
  CHECK(holds(picture,
              "Read: left 12 mm; earlier left 9 mm. On the ruler from low to high: short (below "
              "10 mm); right (10 mm to 15 mm); long (above 15 mm).</desc>"));
  CHECK(holds(picture, "class=\"earlier-words\""));
  CHECK(holds(picture, "class=\"band dense\""));
}

}  // namespace
}  // namespace heelrule
