#include "engine/scoring/joining.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

using operation::is_seen;
using operation::not_seen;

TEST_CASE("the worse side counts, and one that earns nothing decides alone") {
  CHECK(worse_of(500'000, 1'000'000) == 500'000);
  CHECK(worse_of(1'000'000, 500'000) == 500'000);
  CHECK(worse_of(0, 1'000'000) == 0);
  CHECK(worse_of(0, not_seen) == 0);
  CHECK(worse_of(not_seen, 0) == 0);
  CHECK_FALSE(is_seen(worse_of(1'000'000, not_seen)));
  CHECK_FALSE(is_seen(worse_of(not_seen, 500'000)));
  CHECK_FALSE(is_seen(worse_of(not_seen, not_seen)));
}

TEST_CASE("the mean of two sides needs both") {
  CHECK(mean_of(0, 1'000'000) == 500'000);
  CHECK(mean_of(333'333, 0) == 166'666.5);
  CHECK_FALSE(is_seen(mean_of(0, not_seen)));
  CHECK_FALSE(is_seen(mean_of(not_seen, 1'000'000)));
}

}  // namespace
}  // namespace heelrule
