#include "engine/quantity/range.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("a range holds both of its ends and what lies between them") {
  const QuantityRange range = *parse_range("80 mm .. 34 cm");
  CHECK(holds(range, 80));
  CHECK(holds(range, 200.5));
  CHECK(holds(range, 340));
  CHECK_FALSE(holds(range, 79.99));
  CHECK_FALSE(holds(range, 340.01));
}

TEST_CASE("a range in words has both ends in one unit") {
  const QuantityRange range = *parse_range("80 mm .. 34 cm");
  CHECK(show(range, Unit::millimetre) == "80 mm to 340 mm");
  CHECK(show(range, Unit::centimetre) == "8 cm to 34 cm");
  CHECK(show(*parse_range("0.125 mm .. 1 mm"), Unit::millimetre) == "0.1 mm to 1 mm");
  CHECK(show(*parse_range("0.125 mm .. 1 mm"), Unit::millimetre, 9) == "0.125 mm to 1 mm");
}

}  // namespace
}  // namespace heelrule
