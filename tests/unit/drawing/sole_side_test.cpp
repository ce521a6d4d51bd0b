#include "engine/drawing/sole_side.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

SolePicture sole() {
  SolePicture picture;
  picture.id = "sole";
  picture.title = "Sole";
  picture.heel_thickness = 27;
  picture.fore_thickness = 17;
  picture.heel_to_ball = 172;
  picture.toe_spring = 9;
  picture.bend_length = 182;
  picture.inside_length = 257;
  picture.heel_words = "heel 27 mm";
  picture.fore_words = "ball 17 mm";
  picture.distance_words = "172 mm";
  picture.spring_words = "spring 9 mm";
  picture.slope_words = "rise 10 mm, slope 3.3°";
  return picture;
}

TEST_CASE("a sole is drawn a millimetre a unit, each height where it was measured") {
  const std::string picture = draw(sole());
  CHECK(holds(picture, "viewBox=\"0 0 277 "));
  // The floor lies at 57: two rows of words and the thickest place above it. The ball lies 182 mm
  // and the heel 172 mm less from the heel end, which is drawn at 10.
  CHECK(holds(picture, R"(x1="20" y1="57" x2="20" y2="30")"));
  CHECK(holds(picture, R"(x1="192" y1="57" x2="192" y2="40")"));
  CHECK(holds(picture, R"(x1="267" y1="57" x2="267" y2="48")"));
  CHECK(holds(picture, R"(class="level" x1="192" y1="40" x2="20" y2="40")"));
}

TEST_CASE("a sole says in words what it shows") {
  const std::string picture = draw(sole());
  CHECK(holds(picture,
              "heel 27 mm, ball 17 mm, 172 mm, rise 10 mm, slope 3.3°, spring 9 mm.</desc>"));
  for (const char* words :
       {">heel 27 mm<", ">ball 17 mm<", ">172 mm<", ">spring 9 mm<", ">rise 10 mm, slope 3.3°<"}) {
    CHECK(holds(picture, words));
  }
}

TEST_CASE("a sole of which only heel, ball and their distance are known is drawn all the same") {
  SolePicture bare = sole();
  bare.toe_spring.reset();
  bare.bend_length.reset();
  bare.inside_length.reset();
  bare.spring_words.clear();
  const std::string picture = draw(bare);
  // The ball a quarter of the distance farther from the heel end, and at 74 % of the length.
  CHECK(holds(picture, "viewBox=\"0 0 310.541 "));
  CHECK(holds(picture, R"(x1="53" y1="57" x2="53" y2="30")"));
  CHECK(!holds(picture, "spring"));
}

}  // namespace
}  // namespace heelrule
