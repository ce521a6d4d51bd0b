#include "engine/marking/robust_mean.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

namespace heelrule {
namespace {

TEST_CASE("a reading that is far off is moved in, and all others stay as they are") {
  const RobustMean found = robust_mean({4.5, 4.9, 5.6, 4.2, 6.2, 5.2, 9.9});
  // By hand: only 9.9 lies further than 1.5 deviations away, so that it counts as mean + 1.5
  // deviations, and both equations of the algorithm hold.
  const double moved = found.mean + 1.5 * found.deviation;
  CHECK(found.mean == Approx((4.5 + 4.9 + 5.6 + 4.2 + 6.2 + 5.2 + moved) / 7).epsilon(1e-10));
  double squares = (moved - found.mean) * (moved - found.mean);
  for (const double one : {4.5, 4.9, 5.6, 4.2, 6.2, 5.2}) {
    CHECK(std::fabs(one - found.mean) < 1.5 * found.deviation);
    squares += (one - found.mean) * (one - found.mean);
  }
  CHECK(found.deviation == Approx(1.134 * std::sqrt(squares / 6)).epsilon(1e-10));
  CHECK(found.mean == Approx(5.386).margin(0.0005));
  CHECK(found.deviation == Approx(1.146).margin(0.0005));
}

TEST_CASE("readings without one that is far off have their plain mean") {
  CHECK(robust_mean({243, 246}).mean == Approx(244.5));
  CHECK(robust_mean({243, 246}).deviation == Approx(1.134 * std::sqrt(4.5)));
}

TEST_CASE("one reading is its own mean, and most readings alike are it") {
  CHECK(robust_mean({243}).mean == 243);
  CHECK(robust_mean({243}).deviation == 0);
  CHECK(robust_mean({255, 261, 255}).mean == 255);
  CHECK(robust_mean({255, 261, 255}).deviation == 0);
}

TEST_CASE("order, shift and scale do what they should") {
  const std::vector<double> readings{241, 244, 243, 249, 242.5, 243};
  const RobustMean found = robust_mean(readings);
  std::vector<double> moved;
  for (const double one : readings) {
    moved.push_back(2 * one - 100);
  }
  std::reverse(moved.begin(), moved.end());
  CHECK(robust_mean(moved).mean == Approx(2 * found.mean - 100).epsilon(1e-10));
  CHECK(robust_mean(moved).deviation == Approx(2 * found.deviation).epsilon(1e-9));
}

TEST_CASE("however far off one of five is, it moves the mean no further") {
  CHECK(robust_mean({241, 242, 243, 244, 300}).mean ==
        Approx(robust_mean({241, 242, 243, 244, 3000}).mean).epsilon(1e-9));
}

}  // namespace
}  // namespace heelrule
