#include "engine/fitting/own_growth.hpp"

#include <catch2/catch.hpp>
#include <cmath>

#include "tests/unit/fitting/two_feet.hpp"

namespace heelrule {
namespace {

// 182 days are 5.97947 months; 6 mm in them are 1.00343 a month; each mean of two feet is good to
// 0.7071 mm, their difference to 1 mm.
TEST_CASE("two visits give a rate by the mean of both feet") {
  const std::vector<Visit> visits{two_feet_on("2026-01-01", 170, 172),
                                  two_feet_on("2026-07-02", 176, 178)};
  const auto own = own_growth(visits);
  REQUIRE(own);
  CHECK(own->months == Approx(5.97947));
  CHECK(own->a_month == Approx(1.00343));
  CHECK(own->doubt == Approx(1 / 5.97947));
  CHECK(own->covariance == Approx(0.5 / 5.97947));
  CHECK(own->both_feet);
  CHECK_FALSE(own->scatters);
}

TEST_CASE("a foot that was measured each time is followed alone") {
  std::vector<Visit> visits{two_feet_on("2026-01-01", 170, 172),
                            two_feet_on("2026-07-02", 176, 170)};
  visits[0].right.length.reset();
  const auto own = own_growth(visits);
  REQUIRE(own);
  CHECK_FALSE(own->both_feet);
  CHECK(own->a_month == Approx(1.00343));
}

TEST_CASE("there is no rate from one visit, or from feet that were not measured each time") {
  std::vector<Visit> visits{two_feet_on("2026-01-01", 170, 172),
                            two_feet_on("2026-07-02", 176, 170)};
  CHECK_FALSE(own_growth(std::span(visits).first(1)));
  visits[0].right.length.reset();
  visits[1].left.length.reset();
  CHECK_FALSE(own_growth(visits));
}

TEST_CASE("lengths without any doubt cannot be weighed") {
  const std::vector<Visit> visits{two_feet_on("2026-01-01", 170, 172, 0),
                                  two_feet_on("2026-07-02", 176, 170, 0)};
  CHECK_FALSE(own_growth(visits));
}

TEST_CASE("visits that scatter more than their doubts widen the doubt of the rate") {
  const std::vector<Visit> even{two_feet_on("2026-01-01", 170, 170),
                                two_feet_on("2026-04-01", 173, 173),
                                two_feet_on("2026-06-30", 176, 176)};
  const std::vector<Visit> uneven{two_feet_on("2026-01-01", 170, 170),
                                  two_feet_on("2026-04-01", 178, 178),
                                  two_feet_on("2026-06-30", 176, 176)};
  CHECK_FALSE(own_growth(even)->scatters);
  CHECK(own_growth(uneven)->scatters);
  // Off the line by 5 mm in the middle: chi-squared (10/3)² · (1/0.5) + 2 · (5/3)² / 0.5 = 33.33.
  CHECK(own_growth(uneven)->doubt == Approx(own_growth(even)->doubt * std::sqrt(100.0 / 3)));
  CHECK(own_growth(uneven)->a_month == Approx(own_growth(even)->a_month));
}

}  // namespace
}  // namespace heelrule
