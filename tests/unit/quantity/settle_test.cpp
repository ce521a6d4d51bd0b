#include "engine/quantity/settle.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

namespace heelrule {
namespace {

constexpr double month = 2'629'800;  // in seconds: a twelfth of 365.25 days

// In binary fractions 264.4 - 254.4 is 9.999999999999972, and 0.1 + 0.2 is 0.30000000000000004.
TEST_CASE("a settled value is what it is on paper") {
  CHECK(264.4 - 254.4 != 10);
  CHECK(settled(264.4 - 254.4) == 10);
  CHECK(settled(0.1 + 0.2) == 0.3);
  CHECK(settled(-0.1 - 0.2) == -0.3);
  CHECK(settled(1.0 / 3) == 0.333333333);
  CHECK(settled(0) == 0);
}

// 0.6 / 0.2 is 2.9999999999999996.
TEST_CASE("a time of months and years is settled too") {
  const double worked_out = 0.6 / 0.2 * month;
  CHECK(worked_out != 3 * month);
  CHECK(settled(worked_out) == 3 * month);
  CHECK(settled(-worked_out) == -3 * month);
  CHECK(settled(1.23456 * month) == 3246645.888);
}

TEST_CASE("a value that is settled stays as it is") {
  for (const double value : {9.81, 243.84, -17.5, 1'999'999.999999999, 2'000'000.1, 7'889'400.5,
                             5e9 + 0.25, 2.5e10, 1e300}) {
    CAPTURE(value);
    CHECK(settled(settled(value)) == settled(value));
  }
  CHECK(settled(243.84) == 243.84);
  CHECK(settled(7'889'400.5) == 7'889'400.5);
  CHECK(settled(1e300) == 1e300);
}

TEST_CASE("what is no number stays no number") {
  CHECK(std::isnan(settled(std::numeric_limits<double>::quiet_NaN())));
  CHECK(std::isinf(settled(std::numeric_limits<double>::infinity())));
}

}  // namespace
}  // namespace heelrule
