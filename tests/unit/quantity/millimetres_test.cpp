#include "engine/quantity/millimetres.hpp"

#include <catch2/catch.hpp>
#include <limits>
#include <type_traits>

namespace heelrule {
namespace {

static_assert(!std::is_convertible_v<double, Millimetres>);
static_assert(!std::is_convertible_v<Millimetres, double>);
static_assert(sizeof(Millimetres) == sizeof(double));

TEST_CASE("lengths add, subtract, scale and compare") {
  CHECK(Millimetres(245) + Millimetres(10) == Millimetres(255));
  CHECK(Millimetres(245) - Millimetres(250) == Millimetres(-5));
  CHECK(2 * Millimetres(5) == Millimetres(10));
  CHECK(Millimetres(4) / Millimetres(5) == 0.8);
  CHECK(Millimetres(245) < Millimetres(245.5));
}

TEST_CASE("a range of feet holds both of its ends, and nothing that is no number") {
  const FootRange feet{Millimetres(240), Millimetres(260)};
  CHECK(feet.holds(Millimetres(240)));
  CHECK(feet.holds(Millimetres(260)));
  CHECK_FALSE(feet.holds(Millimetres(260.1)));
  CHECK_FALSE(feet.holds(Millimetres(std::numeric_limits<double>::quiet_NaN())));
}

}  // namespace
}  // namespace heelrule
