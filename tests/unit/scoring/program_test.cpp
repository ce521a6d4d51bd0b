#include "engine/scoring/program.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

namespace heelrule {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

double just_above(double cut) { return std::nextafter(cut, infinity); }
double just_below(double cut) { return std::nextafter(cut, -infinity); }

// Short below 6 mm, close below 10 mm, right up to 15 mm, roomy up to 20 mm on a straight line from
// 100 % to 40 %, long beyond.
CreditScale toe_allowance() {
  CreditScale scale;
  scale.thresholds = {6, 10, just_above(15), just_above(20)};
  scale.credits = {
      {0, 0}, {500'000, 500'000}, {1'000'000, 1'000'000}, {1'000'000, 400'000}, {200'000, 200'000}};
  scale.has_ramp = true;
  return scale;
}

TEST_CASE("a value on an open edge belongs to the next band") {
  const CreditScale scale = toe_allowance();
  CHECK(scale.band(just_below(6)) == 0);
  CHECK(scale.band(6) == 1);
  CHECK(scale.band(just_below(10)) == 1);
  CHECK(scale.band(10) == 2);
}

TEST_CASE("a value on a closed edge belongs to the band that it ends") {
  const CreditScale scale = toe_allowance();
  CHECK(scale.band(15) == 2);
  CHECK(scale.band(just_above(15)) == 3);
  CHECK(scale.band(20) == 3);
  CHECK(scale.band(just_above(20)) == 4);
}

TEST_CASE("a flat band earns the same throughout") {
  const CreditScale scale = toe_allowance();
  CHECK(scale.credit(-4) == 0);
  CHECK(scale.credit(6) == 500'000);
  CHECK(scale.credit(9.9) == 500'000);
  CHECK(scale.credit(12) == 1'000'000);
  CHECK(scale.credit(1e6) == 200'000);
}

// By hand: from 15 mm to 20 mm the credit falls by 60 %, so by 12 % a millimetre.
TEST_CASE("a straight line earns in proportion to the way between its cut points") {
  const CreditScale scale = toe_allowance();
  CHECK(scale.credit(16) == 880'000);
  CHECK(scale.credit(17.5) == 700'000);
  CHECK(scale.credit(19.9) == 412'000);
  CHECK(scale.credit(20) == 400'000);
}

TEST_CASE("credit on a straight line is a whole number of millionths, half of one rounded up") {
  CreditScale scale;
  scale.thresholds = {0, just_above(7)};
  scale.credits = {{0, 0}, {0, 333'333}, {1'000'000, 1'000'000}};
  scale.has_ramp = true;
  CHECK(scale.credit(1) == 47'619);     // 47 619.0
  CHECK(scale.credit(2) == 95'238);     // 95 238.0
  CHECK(scale.credit(3.5) == 166'667);  // 166 666.5
  CHECK(scale.credit(7) == 333'333);
}

}  // namespace
}  // namespace heelrule
