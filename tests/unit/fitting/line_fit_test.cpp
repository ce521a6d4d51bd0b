#include "engine/fitting/line_fit.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

namespace heelrule {
namespace {

// By hand: slope 6 / 8, doubt √2 / 8.
TEST_CASE("two points give the line through both") {
  const std::vector<LinePoint> points{{0, 172, 1}, {8, 178, 1}};
  const auto line = fit_line(points);
  REQUIRE(line);
  CHECK(line->slope == Approx(0.75));
  CHECK(line->at_zero == Approx(172));
  CHECK(line->slope_doubt == Approx(0.1767767));
  CHECK(line->at_zero_doubt == Approx(1));
  CHECK(line->chi_squared == 0);
}

// By hand: weights 1, 1, 1/4 at x = 0, 1, 2; Σw = 9/4, mx = 2/3, my = (0 + 1 + 1) / (9/4) = 8/9, S
// = 4/9 + 1/9 + 4/9 = 1, slope = (-2/3)(-8/9) + (1/3)(1/9) + (1/4)(4/3)(28/9) = 5/3.
TEST_CASE("a doubtful point counts for less") {
  const std::vector<LinePoint> points{{0, 0, 1}, {1, 1, 1}, {2, 4, 2}};
  const auto line = fit_line(points);
  REQUIRE(line);
  CHECK(line->slope == Approx(5.0 / 3));
  CHECK(line->at_zero == Approx(8.0 / 9 - 10.0 / 9));
  CHECK(line->slope_doubt == Approx(1));
  CHECK(line->at_zero_doubt == Approx(std::sqrt(4.0 / 9 + 4.0 / 9)));
  CHECK(line->covariance == Approx(-2.0 / 3));
}

TEST_CASE("points on a line leave no chi-squared") {
  const std::vector<LinePoint> points{{0, 1, 0.5}, {1, 3, 1}, {5, 11, 2}};
  CHECK(fit_line(points)->chi_squared == Approx(0).margin(1e-12));
  CHECK(fit_line(points)->slope == Approx(2));
}

TEST_CASE("there is no line through nothing, one point, or points above each other") {
  CHECK_FALSE(fit_line({}));
  const std::vector<LinePoint> one{{3, 1, 1}};
  CHECK_FALSE(fit_line(one));
  const std::vector<LinePoint> above{{3, 1, 1}, {3, 5, 1}};
  CHECK_FALSE(fit_line(above));
}

TEST_CASE("a point that is no number gives no line") {
  const std::vector<LinePoint> points{{std::numeric_limits<double>::quiet_NaN(), 1, 1}, {1, 2, 1}};
  CHECK_FALSE(fit_line(points));
}

}  // namespace
}  // namespace heelrule
