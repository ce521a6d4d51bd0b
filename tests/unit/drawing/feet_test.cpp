#include "engine/drawing/feet.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

FootPicture foot(const std::string& name) {
  FootPicture picture;
  picture.name = name;
  picture.standing = FootForm{243, 94, 180};
  picture.seated = FootForm{240, 91, 0};
  picture.insole = FootForm{257, 97, 185};
  picture.space_in_front = "14 mm";
  picture.space_beside = "3 mm";
  picture.rows = {"standing 243 × 94 mm", "insole 257 × 97 mm"};
  return picture;
}

TEST_CASE("feet are drawn a millimetre a unit, toes up and big toes inward") {
  const std::string picture =
      draw(FeetPicture{"feet", "Feet", foot("left foot"), foot("right foot")});
  // 44 for words, a foot of 100, 40 between, a foot of 100, 44 for words; 26 above 257 of insole.
  CHECK(holds(picture, "viewBox=\"0 0 328 336\""));
  CHECK(holds(picture, "class=\"foot standing\""));
  CHECK(holds(picture, "class=\"foot seated\""));
  // From the toes (243 mm before the heel end, which lies at 283) to the front of the insole.
  CHECK(holds(picture, R"(x1="94" y1="40" x2="94" y2="26")"));
  CHECK(holds(picture, ">14 mm</text>"));
  CHECK(holds(picture, R"(text-anchor="end">3 mm</text>)"));
  CHECK(holds(picture, R"(text-anchor="start">3 mm</text>)"));
}

TEST_CASE("feet say in words what they show") {
  CHECK(holds(draw(FeetPicture{"feet", "Feet", foot("left foot"), foot("right foot")}),
              "left foot: standing 243 × 94 mm, insole 257 × 97 mm, 14 mm in front of the toes, "
              "insole wider than the foot by 3 mm; right foot:"));
}

TEST_CASE("an insole without a width is a line at its front end, and one foot alone is drawn too") {
  FootPicture left = foot("left foot");
  left.insole.reset();
  left.insole_length = 257;
  left.space_beside.clear();
  const std::string picture =
      draw(FeetPicture{"feet", "Feet", left, {"right foot", {}, {}, {}, {}, "", "", {}}});
  CHECK(holds(picture, R"(<line class="insole")"));
  CHECK(!holds(picture, "<path class=\"insole\""));
  CHECK(!holds(picture, "3 mm"));
}

}  // namespace
}  // namespace heelrule
