#include "engine/fitting/foot_change.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/fitting/two_feet.hpp"

namespace heelrule {
namespace {

LoadChange change_of(double seated, double standing, double doubt = 1) {
  Visit visit = two_feet(standing, standing, doubt);
  visit.left.seated_length = about(seated, doubt);
  const auto change = load_change(visit, Side::left);
  REQUIRE(change);
  return *change;
}

TEST_CASE("a foot that was not measured seated has no change under load") {
  CHECK_FALSE(load_change(two_feet(243, 246), Side::left));
}

// Half an English size is 25.4 / 6 mm, a whole one 25.4 / 3 mm.
TEST_CASE("lengthening is judged in English sizes") {
  CHECK(change_of(240, 240).lengthening == Lengthening::as_expected);
  CHECK(change_of(240, 244.2).lengthening == Lengthening::as_expected);
  CHECK(change_of(240, 244.3).lengthening == Lengthening::more_than_half);
  CHECK(change_of(240, 248.4).lengthening == Lengthening::more_than_half);
  CHECK(change_of(240, 248.5).lengthening == Lengthening::whole_size);
}

TEST_CASE("a foot that seems to shorten is misread only where the doubt cannot explain it") {
  CHECK(change_of(240, 238).lengthening == Lengthening::as_expected);
  CHECK(change_of(240, 237).lengthening == Lengthening::misread);
  CHECK(change_of(240, 239.9, 0).lengthening == Lengthening::misread);
}

TEST_CASE("a change below a whole size can be one within its doubt") {
  CHECK(change_of(240, 246).whole_size_within_doubt);
  CHECK_FALSE(change_of(240, 245).whole_size_within_doubt);
  CHECK_FALSE(change_of(240, 250).whole_size_within_doubt);
}

TEST_CASE("width changes where it was measured both ways") {
  Visit visit = two_feet(246, 246);
  visit.left.seated_length = about(243);
  visit.left.seated_width = about(90);
  CHECK_FALSE(load_change(visit, Side::left)->width);
  visit.left.width = about(95);
  CHECK(load_change(visit, Side::left)->width->value == Millimetres(5));
}

TEST_CASE("two sides differ from more than 4 mm on in a way worth noting") {
  CHECK_FALSE(difference_of_sides(two_feet(243, 247))->worth_noting);
  const auto sides = difference_of_sides(two_feet(247.1, 243));
  REQUIRE(sides);
  CHECK(sides->worth_noting);
  CHECK(sides->longer == Side::left);
  CHECK(sides->by.value == Millimetres(4.1));
}

TEST_CASE("one foot alone differs from nothing") {
  Visit visit;
  visit.right.length = about(243);
  CHECK_FALSE(difference_of_sides(visit));
  CHECK(longer_foot(visit) == Side::right);
  CHECK_FALSE(longer_foot(Visit{}));
}

}  // namespace
}  // namespace heelrule
