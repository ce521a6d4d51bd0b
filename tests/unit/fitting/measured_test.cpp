#include "engine/fitting/measured.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

Readings readings(std::vector<double> stored) {
  Readings all;
  all.stored = std::move(stored);
  all.unit = Unit::millimetre;
  return all;
}

TEST_CASE("one reading has the doubt of its trait") {
  CHECK(measured(readings({243}), Millimetres(1)) == Measured{Millimetres(243), Millimetres(1)});
}

TEST_CASE("a doubt that the record states goes before that of the trait") {
  Readings stated = readings({243});
  stated.doubt = 2.5;
  CHECK(measured(stated, Millimetres(1)).doubt == Millimetres(2.5));
}

// s = 0.57735 of 246, 247, 246; s / √3 = 1/3; √(1 + 1/9) = 1.05409, by hand.
TEST_CASE("repeats add their scatter to the doubt of a reading") {
  const Measured found = measured(readings({246, 247, 246}), Millimetres(1));
  CHECK(found.value.value() == Approx(246.33333));
  CHECK(found.doubt.value() == Approx(1.05409));
}

TEST_CASE("repeats that agree leave the doubt of one reading, for an instrument can be wrong too") {
  CHECK(measured(readings({246, 246}), Millimetres(1)).doubt == Millimetres(1));
}

TEST_CASE("the doubts of a difference add up by their squares") {
  const Measured by =
      Measured{Millimetres(246), Millimetres(3)} - Measured{Millimetres(243), Millimetres(4)};
  CHECK(by == Measured{Millimetres(3), Millimetres(5)});
  CHECK(by.lowest() == Millimetres(-7));
  CHECK(by.highest() == Millimetres(13));
}

TEST_CASE("a difference is settled as on paper") {
  const Measured by =
      Measured{Millimetres(255.3), Millimetres(0)} - Measured{Millimetres(245.3), Millimetres(0)};
  CHECK(by.value == Millimetres(10));
}

}  // namespace
}  // namespace heelrule
