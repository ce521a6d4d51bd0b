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

MeasureKind good_to(double doubt) {
  return {Unit::millimetre, {}, Located<Quantity>{{doubt, Unit::millimetre}, {}}, {}};
}

TEST_CASE("a length is the mean of its readings, with its standard uncertainty") {
  CHECK(measured(readings({243}), good_to(1)) == Measured{Millimetres(243), Millimetres(1)});
  const Measured found = measured(readings({246, 247, 246}), good_to(1));
  CHECK(found.value.value() == Approx(246.33333));
  CHECK(found.doubt.value() == Approx(1.06051));
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
