#include "engine/fitting/outgrowing.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/fitting/two_feet.hpp"

namespace heelrule {
namespace {

TEST_CASE("a reserve that is used up is outgrown today") {
  CHECK(outgrown_by_age(about(0, 0), 4) == Outgrowing{0, 0, 0});
  CHECK(outgrown_by_age(about(-3, 0), 4) == Outgrowing{0, 0, 0});
}

TEST_CASE("feet that do not grow outgrow nothing") {
  CHECK(outgrown_by_age(about(7, 0), 16) == Outgrowing{});
}

TEST_CASE("what would last longer than three years is not forecast") {
  CHECK_FALSE(outgrown_by_age(about(60, 0), 6).expected);
}

TEST_CASE("the doubt of the reserve alone spreads the days") {
  // 1 mm a month at 4 years, slow 10/12, fast 1.5: at 4 months √(2² + 2²) = 2.83 are added to 4.
  const Outgrowing found = outgrown_by_age(about(7, 1), 3);
  CHECK(found.expected == 214);  // 7 months are 213.06 days
  REQUIRE(found.earliest);
  CHECK(*found.earliest == 126);  // 4.14 + √(4 + 4.28) = 7.02 after 126 days
}

// 1 ± 0.1 mm a month and 7 ± 0 mm: t + 0.2 t = 7 after 5.83 months, t - 0.2 t = 7 after 8.75.
TEST_CASE("an own rate is outgrown between the ends of its doubt") {
  OwnGrowth own;
  own.a_month = 1;
  own.doubt = 0.1;
  CHECK(outgrown_by_own_rate(about(7, 0), own) == Outgrowing{178, 214, 267});
}

TEST_CASE("a length that was over-read makes both the rate and the wear look fast") {
  OwnGrowth apart;
  apart.a_month = 1;
  apart.doubt = 0.1;
  OwnGrowth together = apart;
  together.covariance = 0.05;
  const Outgrowing narrow = outgrown_by_own_rate(about(7), apart);
  const Outgrowing wide = outgrown_by_own_rate(about(7), together);
  CHECK(*wide.earliest < *narrow.earliest);
  CHECK(*wide.latest > *narrow.latest);
  CHECK(wide.expected == narrow.expected);
}

TEST_CASE("a rate that could be nought has no latest day") {
  OwnGrowth own;
  own.a_month = 0.5;
  own.doubt = 0.3;
  const Outgrowing found = outgrown_by_own_rate(about(7), own);
  CHECK(found.earliest);
  CHECK(found.expected);
  CHECK_FALSE(found.latest);
}

}  // namespace
}  // namespace heelrule
