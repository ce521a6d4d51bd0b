#include "engine/model/inspection.hpp"

#include <catch2/catch.hpp>
#include <cmath>

namespace heelrule {
namespace {

Observation seen(std::size_t trait, Side side) {
  Observation observation;
  observation.trait = trait;
  observation.side = side;
  observation.value = Answer{true};
  return observation;
}

TEST_CASE("an observation is found by its trait and side") {
  Inspection inspection;
  inspection.observations = {seen(1, Side::left), seen(1, Side::right), seen(4, Side::none)};
  CHECK(inspection.find(1, Side::left) == &inspection.observations[0]);
  CHECK(inspection.find(1, Side::right) == &inspection.observations[1]);
  CHECK(inspection.find(4, Side::none) == &inspection.observations[2]);
}

TEST_CASE("what was not recorded is not found") {
  Inspection inspection;
  CHECK(inspection.find(0, Side::none) == nullptr);
  inspection.observations = {seen(1, Side::left), seen(4, Side::none)};
  CHECK(inspection.find(1, Side::right) == nullptr);
  CHECK(inspection.find(1, Side::none) == nullptr);
  CHECK(inspection.find(4, Side::left) == nullptr);
  CHECK(inspection.find(9, Side::none) == nullptr);
}

TEST_CASE("a mean is settled: three readings of a third are a third") {
  CHECK(mean({{243}, Unit::millimetre, {}, false}) == 243);
  CHECK(mean({{0.1, 0.2, 0.3}, Unit::millimetre, {}, false}) == 0.2);
  CHECK(mean({{1, 2, 2}, Unit::millimetre, {}, false}) == 1.666666667);
}

}  // namespace
}  // namespace heelrule
