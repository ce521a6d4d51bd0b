#include "engine/scoring/check_grades.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

const std::vector<GradeBound> bounds{80'000, 55'000, 0};

TEST_CASE("a score on a boundary has the better grade") {
  CHECK(grade_of(bounds, 800'000, 1) == 0);
  CHECK(grade_of(bounds, 799'999, 1) == 1);
  CHECK(grade_of(bounds, 550'000, 1) == 1);
  CHECK(grade_of(bounds, 549'999, 1) == 2);
  CHECK(grade_of(bounds, 0, 1) == 2);
}

// A double cannot tell 80 from 79.999999999999993, and sums can.
TEST_CASE("a score is held against a boundary by its exact sums") {
  const double weight = 999'999'999;
  CHECK(grade_of(bounds, 80'000 * 10 * weight, weight) == 0);
  CHECK(grade_of(bounds, 80'000 * 10 * weight - 1, weight) == 1);
}

TEST_CASE("the grade of thirds is that of the exact fraction") {
  // 2 of 3 is 66.666…: above 66.666 and below 66.667.
  CHECK(grade_of({66'666, 0}, 2'000'000, 3) == 0);
  CHECK(grade_of({66'667, 0}, 2'000'000, 3) == 1);
}

}  // namespace
}  // namespace heelrule
