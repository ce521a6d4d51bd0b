#include "engine/doubt/conformity.hpp"

#include <catch2/catch.hpp>
#include <limits>

namespace heelrule {
namespace {

CreditScale scale(std::vector<double> thresholds, std::vector<double> credits) {
  CreditScale made;
  made.thresholds = std::move(thresholds);
  for (const double credit : credits) {
    made.credits.push_back({credit, credit});
  }
  return made;
}

TEST_CASE("without doubt a chance is 0 or 1, and a value at a limit is not below it") {
  CHECK(chance_below(9.9, 0, 10) == 1);
  CHECK(chance_below(10, 0, 10) == 0);
  CHECK(band_chances(scale({10, 15}, {0, 1e6, 2e5}), 10, 0) == std::vector<double>{0, 1, 0});
}

TEST_CASE("the chances of the bands add up to 1, also far away from all of them") {
  const CreditScale bands = scale({6, 10, 15, 20}, {0, 5e5, 1e6, 6e5, 2e5});
  for (double value = -300; value < 300; value += 7.3) {
    for (const double uncertainty : {0.01, 1.0, 40.0}) {
      double sum = 0;
      for (const double chance : band_chances(bands, value, uncertainty)) {
        REQUIRE(chance >= 0);
        sum += chance;
      }
      REQUIRE(sum == Approx(1).epsilon(1e-12));
    }
  }
}

// The upper tail beyond 9: 1.1286e-19 (Abramowitz and Stegun, table 26.2, to their digits).
TEST_CASE("a small chance in the upper tail is not lost to rounding") {
  CHECK(chance_within(0, 1, 9, std::numeric_limits<double>::infinity()) ==
        Approx(1.1286e-19).epsilon(1e-4));
}

TEST_CASE("a guard band of no width guards nothing") {
  CHECK_FALSE(guarded_band(scale({10}, {0, 1e6}), 10, 0));
}

TEST_CASE("a reading is accepted outside the guard band and not inside it") {
  const CreditScale bands = scale({10, 15, 20}, {0, 1e6, 5e5, 0});
  CHECK(guarded_band(bands, 10.9, 1) == 0U);
  CHECK(guarded_band(bands, 11.1, 1) == std::nullopt);
  CHECK(guarded_band(bands, 14.5, 1) == std::nullopt);  // less credit is no fail
  CHECK(guarded_band(bands, 19.5, 1) == 3U);
  CHECK(guarded_band(bands, 16, 7) == 3U);  // the nearer of two
  CHECK(guarded_band(bands, 12, 9) == 0U);
}

TEST_CASE("what fails already is not guarded") {
  CHECK(guarded_band(scale({10}, {0, 1e6}), 9.9, 1) == std::nullopt);
}

TEST_CASE("a straight line that ends in nothing is no failing band") {
  CreditScale bands = scale({10, 20}, {1e6, 0, 0});
  bands.credits[1] = {1e6, 0};
  bands.has_ramp = true;
  CHECK(guarded_band(bands, 9.5, 2) == std::nullopt);
  CHECK(guarded_band(bands, 19, 2) == 2U);
}

}  // namespace
}  // namespace heelrule
