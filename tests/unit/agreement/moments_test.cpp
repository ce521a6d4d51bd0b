#include "engine/agreement/moments.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <vector>

namespace heelrule {
namespace {

TEST_CASE("numbers have a mean, squares about it, and a deviation") {
  const Moments moments = moments_of(std::vector<double>{2, 4, 9});
  CHECK(moments.count == 3);
  CHECK(moments.mean == Approx(5));
  CHECK(moments.squares == Approx(26));
  CHECK(moments.deviation() == Approx(std::sqrt(13.0)));
}

TEST_CASE("a single number has no deviation that is known") {
  CHECK(std::isnan(moments_of(std::vector<double>{7}).deviation()));
}

}  // namespace
}  // namespace heelrule
