#include "engine/fitting/child_outlook.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/fitting/two_feet.hpp"

namespace heelrule {
namespace {

constexpr ToeWindow window{Millimetres(5), Millimetres(10), Millimetres(17)};

Visit aged(Visit visit, double age) {
  visit.age = age;
  return visit;
}

ChildOutlook outlook(const std::vector<Visit>& visits) {
  const auto found = child_outlook(visits, window);
  REQUIRE(found);
  return *found;
}

TEST_CASE("without an age nothing is said about growth") {
  const std::vector<Visit> visits{two_feet(178, 179)};
  CHECK_FALSE(child_outlook(visits, window));
}

TEST_CASE("an age that an earlier visit told goes on to the latest") {
  const ChildOutlook child =
      outlook({aged(two_feet_on("2025-10-03", 170, 170), 4), two_feet_on("2026-10-03", 180, 180)});
  CHECK(child.age == Approx(4 + 365 / 365.25));
}

TEST_CASE("a new pair has 7 mm to grow into: 12 less the 5 that a step takes") {
  const ChildOutlook child = outlook({aged(two_feet(178, 179), 4)});
  CHECK(child.fresh.side == Side::right);
  CHECK(child.fresh.reserve == about(7));
  CHECK_FALSE(child.present);
  CHECK_FALSE(child.by_own_rate);
}

TEST_CASE("the pair that is worn is judged by the foot with less space") {
  Visit visit = aged(two_feet(178, 179), 4);
  visit.left.inside_length = about(190);
  visit.right.inside_length = about(192);
  const ChildOutlook child = outlook({visit});
  REQUIRE(child.present);
  CHECK(child.present->side == Side::left);
  CHECK(child.present->reserve.value == Millimetres(7));
  CHECK(child.present->reserve.doubt.value() == Approx(1.41421356));
}

TEST_CASE("the own rate is used as soon as it is surer than the table") {
  // At 6 years the table is good to 0.168 mm a month; two visits are to 1 mm over their months.
  const std::vector<Visit> near{aged(two_feet_on("2026-06-03", 175, 175), 6),
                                aged(two_feet_on("2026-10-03", 178, 178), 6.3)};
  CHECK(outlook(near).own);
  CHECK_FALSE(outlook(near).by_own_rate);
  const std::vector<Visit> far{aged(two_feet_on("2026-04-03", 175, 175), 6),
                               aged(two_feet_on("2026-10-03", 178, 178), 6.5)};
  CHECK(outlook(far).by_own_rate);
}

TEST_CASE("feet that seem to shrink leave the table in use") {
  const ChildOutlook child = outlook(
      {aged(two_feet_on("2025-10-03", 180, 180), 6), aged(two_feet_on("2026-10-03", 178, 178), 7)});
  REQUIRE(child.own);
  CHECK(child.own->a_month < 0);
  CHECK_FALSE(child.by_own_rate);
}

TEST_CASE("feet are measured again at the interval of the age") {
  CHECK(outlook({aged(two_feet(178, 179), 4)}).look_again == 60);
  CHECK(outlook({aged(two_feet(230, 230), 14)}).look_again == 182);
}

TEST_CASE("a pair that may be outgrown sooner is measured sooner") {
  Visit visit = aged(two_feet(178, 179), 8);
  visit.left.inside_length = about(190);
  visit.right.inside_length = about(185.5);
  const ChildOutlook child = outlook({visit});
  CHECK(child.look_again == child.present->outgrown.earliest);
  CHECK(child.look_again < 91);
}

TEST_CASE("a pair that is outgrown sets no date; the new one does") {
  Visit visit = aged(two_feet(178, 179), 8);
  visit.right.inside_length = about(182);
  const ChildOutlook child = outlook({visit});
  CHECK(child.present->reserve.value == Millimetres(-2));
  CHECK(child.look_again == 91);
}

}  // namespace
}  // namespace heelrule
