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

TEST_CASE("words of readings never lie on the line of another") {
  // From 8.25 to 16.75. The lower one's words end at its line, and the higher one's begin there.
  const std::string two = draw(toe_space({{12, 0, "left 12 mm"}, {12.5, 0, "right 12.5 mm"}}));
  CHECK(holds(two, R"(x="44.118%" y="12" text-anchor="end">left 12 mm<)"));
  CHECK(holds(two, R"(x="50%" y="12" text-anchor="start">right 12.5 mm<)"));
  // No room to the left of them: the first stands higher, and both begin at their lines.
  const std::string stairs = draw(toe_space({{9, 0, "left 9 mm"}, {9.1, 0, "right 9.1 mm"}}));
  CHECK(holds(stairs, R"(y="12" text-anchor="start">left 9 mm<)"));
  CHECK(holds(stairs, R"(y="27" text-anchor="start">right 9.1 mm<)"));
}

TEST_CASE("a small ruler has the numbers of its cuts and no other words, and says the same") {
  const Ruler ruler = toe_space({{12, 1, "left 12 mm"}});
  const std::string picture = draw_small(ruler);
  CHECK(holds(picture, ">10 mm</text>"));
  CHECK(!holds(picture, ">left 12 mm</text>"));
  CHECK(!holds(picture, ">right</text>"));
  CHECK(holds(picture, "notch doubt"));
  const std::string full = draw(ruler);
  const auto description = [](const std::string& text) {
    return text.substr(text.find("<desc"), text.find("</desc>") - text.find("<desc"));
  };
  CHECK(description(picture) == description(full));
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
