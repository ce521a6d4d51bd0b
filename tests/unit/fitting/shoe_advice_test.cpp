#include "engine/fitting/shoe_advice.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/fitting/two_feet.hpp"

namespace heelrule {
namespace {

constexpr ToeWindow adult{Millimetres(6), Millimetres(10), Millimetres(15)};

std::vector<std::string> sizes_of(const ShoeAdvice& advice) {
  std::vector<std::string> shown;
  for (const SizeToAsk& ask : advice.sizes) {
    shown.push_back(ask.size ? show(*ask.size) : "none");
  }
  return shown;
}

TEST_CASE("everything is chosen for the longer standing foot") {
  const ShoeAdvice advice = shoe_advice(two_feet(243, 246), adult, false);
  CHECK(advice.longer == Side::right);
  CHECK(advice.inside_least == Millimetres(256));
  CHECK(advice.inside_most == Millimetres(261));
  CHECK(sizes_of(advice) ==
        std::vector<std::string>{"MP 245", "EU 39", "UK 6", "US M 7", "US W 8", "JP 24.5"});
}

TEST_CASE("each size comes with its reason") {
  const ShoeAdvice advice = shoe_advice(two_feet(243, 246), adult, false);
  CHECK(advice.sizes[0].reason == "foot length in mm, to the nearest 5 mm");
  CHECK(advice.sizes[1].reason == "1.5 · foot length in cm + 2 = 38.9");
}

TEST_CASE("a foot half way between two sizes is told to ask for the smaller") {
  CHECK(sizes_of(shoe_advice(two_feet(247.5, 247.5), adult, false))[0] == "MP 245");
  CHECK(sizes_of(shoe_advice(two_feet(247.6, 247.6), adult, false))[0] == "MP 250");
}

TEST_CASE("feet beyond a table get no size in its systems, and one where length is the size") {
  CHECK(sizes_of(shoe_advice(two_feet(205, 205), adult, false)) ==
        std::vector<std::string>{"MP 205", "EU 32.5", "none", "none", "none", "JP 20.5"});
  const ShoeAdvice long_feet = shoe_advice(two_feet(330, 330), adult, false);
  CHECK(sizes_of(long_feet)[2] == "none");
  CHECK(long_feet.sizes[2].reason.empty());
}

TEST_CASE("a child gets children's sizes up to the end of their table, and adults' beyond") {
  const ShoeAdvice small = shoe_advice(two_feet(180, 179), adult, true);
  CHECK(small.wearer == Wearer::child);
  CHECK(sizes_of(small) == std::vector<std::string>{"MP 180", "EU 29", "none", "none", "JP 18.0"});
  CHECK(shoe_advice(two_feet(227.5, 220), adult, true).wearer == Wearer::child);
  CHECK(shoe_advice(two_feet(227.6, 220), adult, true).wearer == Wearer::adult);
}

SmallerFoot smaller(double left, double right) {
  const ShoeAdvice advice = shoe_advice(two_feet(left, right), adult, false);
  REQUIRE(advice.smaller);
  return *advice.smaller;
}

TEST_CASE("feet that differ by no more than the window share an inside length") {
  CHECK(smaller(246, 241).remedy == Remedy::one_pair);
  CHECK(smaller(246, 243).shared_most == Millimetres(258));
  CHECK(smaller(246, 243).least_space == Millimetres(13));
  CHECK(smaller(246, 243).most_space == Millimetres(18));
  CHECK(smaller(246, 246).remedy == Remedy::one_pair);
}

TEST_CASE("beyond that the smaller foot is filled up, until the feet are a Paris point apart") {
  CHECK(smaller(246, 240.9).remedy == Remedy::fill);
  CHECK(smaller(246, 239.4).remedy == Remedy::fill);
  CHECK(smaller(246, 239.3).remedy == Remedy::two_pairs);
}

TEST_CASE("one foot alone has no smaller one beside it") {
  Visit visit;
  visit.left.length = about(243);
  CHECK_FALSE(shoe_advice(visit, adult, false).smaller);
}

TEST_CASE("the wider foot and the fuller foot decide, whichever side they are") {
  Visit visit = two_feet(243, 246);
  visit.left.width = about(96.4);
  visit.right.width = about(95);
  visit.left.girth = about(243, 2);
  const ShoeAdvice advice = shoe_advice(visit, adult, false);
  REQUIRE(advice.with_width);
  CHECK(show(*advice.with_width) == "MP 245/96");
  REQUIRE(advice.girth);
  CHECK(advice.girth->girth.value == Millimetres(243));
}

// Rule of JIS S 5037 (secondary source): men 189 + 6 i + 3 (245 - 200) / 5 = 216 + 6 i, E 240 up to
// below 243; women 183 + 6 i + 3 (245 - 195) / 5 = 213 + 6 i, EE 243.
TEST_CASE("a girth is a letter for men and another for women") {
  Visit visit = two_feet(245, 245);
  visit.left.girth = about(241, 2);
  const ShoeAdvice advice = shoe_advice(visit, adult, false);
  REQUIRE(advice.girth);
  CHECK(*advice.girth->men == GirthCode::e);
  CHECK(*advice.girth->women == GirthCode::ee);
}

TEST_CASE("a child's girth has no letter") {
  Visit visit = two_feet(180, 180);
  visit.left.girth = about(170, 2);
  CHECK_FALSE(shoe_advice(visit, adult, true).girth);
}

TEST_CASE("a width that no size can carry is told without one") {
  Visit visit = two_feet(245, 245);
  visit.left.width = about(20);
  const ShoeAdvice advice = shoe_advice(visit, adult, false);
  CHECK(advice.width);
  CHECK_FALSE(advice.with_width);
}

}  // namespace
}  // namespace heelrule
