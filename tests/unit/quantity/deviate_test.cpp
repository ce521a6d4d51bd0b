#include "engine/quantity/deviate.hpp"

#include <boost/math/distributions/normal.hpp>
#include <catch2/catch.hpp>

namespace heelrule {
namespace {

// Boost.Math, which goes another way: it inverts its own error function.
TEST_CASE("quantiles are those of a general library, from the middle to the far tails") {
  const boost::math::normal standard;
  for (int i = 1; i < 2000; ++i) {
    const double fraction = i / 2000.0;
    CAPTURE(fraction);
    REQUIRE(normal_deviate(fraction) ==
            Approx(boost::math::quantile(standard, fraction)).epsilon(1e-14).margin(1e-15));
  }
  for (double fraction = 0.05; fraction > 1e-300; fraction /= 7) {
    CAPTURE(fraction);
    REQUIRE(normal_deviate(fraction) ==
            Approx(boost::math::quantile(standard, fraction)).epsilon(1e-14));
  }
}

TEST_CASE("below and above the middle it is the same distance") {
  CHECK(normal_deviate(0.5) == 0);
  for (const double fraction : {0.25, 0.125, 0.0625, 0.03125}) {
    CHECK(normal_deviate(fraction) == -normal_deviate(1 - fraction));
  }
}

// Only operations that IEEE 754 rounds in one way: so these digits hold on every machine.
TEST_CASE("it is the same to the last bit") {
  CHECK(normal_deviate(0.975) == 0x1.f5c0331eeff82p+0);
  CHECK(normal_deviate(0x1p-33) == -0x1.95a1198fcf3d4p+2);
}

}  // namespace
}  // namespace heelrule
