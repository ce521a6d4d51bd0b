// What marked sock ranges mean in foot length.
#include <catch2/catch.hpp>

#include "engine/quantity/sock_range.hpp"

namespace heelrule {
namespace {

FootRange feet(std::string_view text) {
  const auto range = parse_sock_range(text);
  INFO(text << ": " << range.problem().message);
  REQUIRE(range);
  const auto feet = feet_of(*range);
  REQUIRE(feet);
  return *feet;
}

// From the EU formula of ISO 19407, by hand: (39 - 2) / 1.5 and (42 - 2) / 1.5.
TEST_CASE("EU 39-42 is a sock for feet of 24.67 to 26.67 cm") {
  CHECK(feet("EU 39-42").shortest.value() / 10 == Approx(24.67).margin(0.005));
  CHECK(feet("EU 39-42").longest.value() / 10 == Approx(26.67).margin(0.005));
}

// Rows 245 and 265 of the table for adults of ISO/TS 19407, secondary source.
TEST_CASE("UK 6-8½ is a sock for feet of 245 to 265 mm") {
  CHECK(feet("UK 6-8½") == FootRange{Millimetres(245), Millimetres(265)});
}

// Practice under GOST 8541-2014, secondary source: the number is the foot length in cm, 25 covers
// 24-26 cm.
TEST_CASE("the metric sock number 25 is for feet of 24 to 26 cm, and so is the range in cm") {
  CHECK(feet("sock 25") == FootRange{Millimetres(240), Millimetres(260)});
  CHECK(feet("24-26 cm") == feet("sock 25"));
  CHECK(feet("sock 23").longest == feet("sock 25").shortest);
}

// The control dimension of socks is the foot length (EN 13402); worked out by hand.
TEST_CASE("a foot of 25.4 cm takes 24-26 cm, and neither 26-28 nor 23-25 cm") {
  const Millimetres foot(254);
  CHECK(feet("24-26 cm").holds(foot));
  CHECK_FALSE(feet("26-28 cm").holds(foot));
  CHECK_FALSE(feet("23-25 cm").holds(foot));
}

// Trade articles: roughly the foot length in inches, and no shoe size.
TEST_CASE("the American sock numbers 9-11 are about inches of foot length") {
  CHECK(feet("US sock 9-11").shortest.value() == Approx(228.6));
  CHECK(feet("US sock 9-11").longest.value() == Approx(279.4));
}

}  // namespace
}  // namespace heelrule
