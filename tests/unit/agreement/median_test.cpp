#include "engine/agreement/median.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("the median lies in the middle, in whatever order the numbers come") {
  CHECK(median({5}) == 5);
  CHECK(median({9, 4, 5}) == 5);
  CHECK(median({9, 4, 5, 6}) == 5.5);
  CHECK(median({-1, 1'000, 0, 0}) == 0);
}

}  // namespace
}  // namespace heelrule
