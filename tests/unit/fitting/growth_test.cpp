#include "engine/fitting/growth.hpp"

#include <catch2/catch.hpp>
#include <limits>

namespace heelrule {
namespace {

TEST_CASE("a stage begins on its birthday") {
  CHECK(growth_stage(0).from_age == 0);
  CHECK(growth_stage(1.2499).from_age == 0);
  CHECK(growth_stage(1.25).from_age == 1.25);
  CHECK(growth_stage(4.999).from_age == 3);
  CHECK(growth_stage(5).from_age == 5);
  CHECK(growth_stage(80).from_age == 15);
}

TEST_CASE("an age that no child has is that of a newborn") {
  CHECK(growth_stage(-1).from_age == 0);
  CHECK(growth_stage(std::numeric_limits<double>::quiet_NaN()).from_age == 0);
}

TEST_CASE("stages run upward, and slow, expected and fast lie in this order") {
  double last = -1;
  for (const GrowthStage& stage : growth_stages()) {
    CHECK(stage.from_age > last);
    CHECK(stage.pace.slow <= stage.pace.expected);
    CHECK(stage.pace.expected <= stage.pace.fast);
    CHECK_FALSE(stage.source.empty());
    last = stage.from_age;
  }
}

TEST_CASE("growth adds up over the stages that begin on the way") {
  const double half_a_year = 365.25 / 2;
  // From 2.75 years on: 3 months at 1.25 mm and 3 months at 1 mm.
  CHECK(usual_growth(2.75, half_a_year, &GrowthPace::expected) == Approx(3 * 1.25 + 3));
  CHECK(usual_growth(5, 365.25, &GrowthPace::expected) == Approx(8.5));
  CHECK(usual_growth(5, 0, &GrowthPace::fast) == 0);
  CHECK(usual_growth(14.5, 3 * 365.25, &GrowthPace::fast) == Approx(8.5 / 2));
  CHECK(usual_growth(20, 1000, &GrowthPace::fast) == 0);
}

// (15 - 8) / 12 / √12, by hand.
TEST_CASE("the table is as sure as its range is narrow") {
  CHECK(doubt_of_usual_growth(6) == Approx(0.168394));
  CHECK(doubt_of_usual_growth(16) == 0);
}

TEST_CASE("younger children are measured more often") {
  CHECK(months_to_next_measuring(1) == 1);
  CHECK(months_to_next_measuring(3) == 2);
  CHECK(months_to_next_measuring(5.9) == 2);
  CHECK(months_to_next_measuring(6) == 3);
  CHECK(months_to_next_measuring(9) == 4);
  CHECK(months_to_next_measuring(13) == 6);
}

}  // namespace
}  // namespace heelrule
