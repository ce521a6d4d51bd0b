#include "engine/drawing/score_bars.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

ScoreBars bars() {
  return {"score",
          "Score",
          {{"All together", 56.7, 46.4, 64.5, "56.7 of 100 (46.4 to 64.5)", true},
           {"Fit", 25.0, 25, 25, "25.0 of 100", false},
           {"Wear", {}, 0, 100, "not seen", false}},
          {{85, "sound"}, {0, "unfit"}}};
}

TEST_CASE("a bar is as long as its points, and reaches from the lowest to the highest") {
  const std::string picture = draw(bars());
  CHECK(holds(picture, R"(width="56.7%")"));
  CHECK(holds(picture, R"(class="reach" x="46.4%")"));
  CHECK(holds(picture, R"(width="18.1%")"));
  CHECK(holds(picture, R"(class="reach" x="0%")"));
  // Of what was seen in full nothing is open, and of what was not seen nothing is earned.
  std::size_t reaches = 0;
  std::size_t earned = 0;
  for (std::size_t at = 0; (at = picture.find("class=\"reach\"", at)) != std::string::npos; ++at) {
    ++reaches;
  }
  for (std::size_t at = 0; (at = picture.find("class=\"earned\"", at)) != std::string::npos; ++at) {
    ++earned;
  }
  CHECK(reaches == 2);
  CHECK(earned == 2);
}

TEST_CASE("grades are marked under the sum where they begin") {
  const std::string picture = draw(bars());
  CHECK(holds(picture, R"(class="mark" x1="85%")"));
  CHECK(holds(picture, ">sound 85</text>"));
}

TEST_CASE("bars say in words what they show") {
  CHECK(holds(draw(bars()),
              "All together: 56.7 of 100 (46.4 to 64.5); Fit: 25.0 of 100; Wear: not seen. Grades: "
              "sound from 85; unfit from 0.</desc>"));
}

}  // namespace
}  // namespace heelrule
