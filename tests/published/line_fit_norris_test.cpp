// A straight line against the certified values of NIST: dataset Norris of the Statistical Reference
// Datasets for linear regression, https://www.itl.nist.gov/div898/strd/lls/data/Norris.shtml. Data
// and values from memory; a slip in either would not agree to ten digits.
#include <catch2/catch.hpp>

#include "engine/fitting/line_fit.hpp"

namespace heelrule {
namespace {

// Certified: intercept, slope, their standard deviations, the residual standard deviation.
constexpr double intercept = -0.262323073774029;
constexpr double slope = 1.00211681802045;
constexpr double intercept_deviation = 0.232818234301152;
constexpr double slope_deviation = 0.429796848199937e-3;
constexpr double residual_deviation = 0.884796396144373;

std::vector<LinePoint> norris() {
  std::vector<LinePoint> points{{0.2, 0.1},     {337.4, 338.8}, {118.2, 118.1}, {884.6, 888.0},
                                {10.1, 9.2},    {226.5, 228.1}, {666.3, 668.5}, {996.3, 998.5},
                                {448.6, 449.1}, {777.0, 778.9}, {558.2, 559.2}, {0.4, 0.3},
                                {0.6, 0.1},     {775.5, 778.1}, {666.9, 668.8}, {338.0, 339.3},
                                {447.5, 448.9}, {11.6, 10.8},   {556.0, 557.7}, {228.1, 228.3},
                                {995.8, 998.0}, {887.6, 888.8}, {120.2, 119.6}, {0.3, 0.3},
                                {0.3, 0.6},     {556.8, 557.6}, {339.1, 339.3}, {887.2, 888.0},
                                {999.0, 998.5}, {779.0, 778.9}, {11.1, 10.2},   {118.3, 117.6},
                                {229.2, 228.9}, {669.1, 668.4}, {448.9, 449.2}, {0.5, 0.2}};
  for (LinePoint& point : points) {
    point.doubt = residual_deviation;
  }
  return points;
}

TEST_CASE("the line through Norris has the certified slope and intercept") {
  const auto line = fit_line(norris());
  REQUIRE(line);
  CHECK(line->slope == Approx(slope).epsilon(1e-10));
  CHECK(line->at_zero == Approx(intercept).epsilon(1e-10));
}

TEST_CASE("with the certified scatter as doubt its doubts are the certified deviations") {
  const auto line = fit_line(norris());
  REQUIRE(line);
  CHECK(line->slope_doubt == Approx(slope_deviation).epsilon(1e-10));
  CHECK(line->at_zero_doubt == Approx(intercept_deviation).epsilon(1e-10));
  CHECK(line->chi_squared == Approx(36 - 2).epsilon(1e-10));
}

}  // namespace
}  // namespace heelrule
