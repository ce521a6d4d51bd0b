#include "engine/agreement/standing.hpp"

#include <catch2/catch.hpp>

#include "engine/agreement/mean_squares.hpp"
#include "engine/quantity/random_sequence.hpp"

namespace heelrule {
namespace {

// Twelve students on five shoes; student 3 gives `more`, student 8 scatters `wider` times as much.
Ratings scores(RandomSequence& random, double more, double wider) {
  Ratings ratings(5, 12);
  for (std::size_t shoe = 0; shoe < 5; ++shoe) {
    for (std::size_t student = 0; student < 12; ++student) {
      double error = -6;
      for (int i = 0; i < 12; ++i) {
        error += random.share();
      }
      error *= student == 8 ? wider : 1;
      const double truth = 40 + 10 * static_cast<double>(shoe);
      ratings.set(shoe, student, truth + error + (student == 3 ? more : 0));
    }
  }
  return ratings;
}

TEST_CASE("the standard error of a bias is that of the two-way analysis of variance") {
  RandomSequence random(1);
  const Ratings ratings = scores(random, 0, 1);
  const MeanSquares squares = mean_squares(ratings);
  const double expected = std::sqrt(12.0 / 11 * squares.residual / 5);
  for (const Standing& one : standings(ratings)) {
    CHECK(one.bias.standard_error == Approx(expected).epsilon(1e-12));
    CHECK(one.bias.interval.high - one.bias.value ==
          Approx(expected * student_quantile(upper_tail, 44)).epsilon(1e-12));
  }
}

TEST_CASE("one lenient student is found, and makes nobody else look severe") {
  RandomSequence random(2);
  for (int round = 0; round < 50; ++round) {
    const std::vector<Standing> far = far_biases(scores(random, 6, 1));
    REQUIRE(!far.empty());
    CHECK(far[0].observer == 3);
    CHECK(far[0].bias.value == Approx(6).margin(2.5));
    CHECK(far.size() <= 2);
  }
}

TEST_CASE("a student who scatters is found") {
  RandomSequence random(3);
  int found = 0;
  for (int round = 0; round < 50; ++round) {
    for (const Standing& one : far_spreads(scores(random, 0, 5))) {
      found += one.observer == 8 ? 1 : 0;
    }
  }
  CHECK(found >= 45);
}

// Both lines are drawn so that one class in twenty has somebody beyond each by chance.
TEST_CASE("where nobody differs, somebody is told to stand apart in one class of twenty") {
  RandomSequence random(4);
  int biased = 0;
  int scattered = 0;
  for (int round = 0; round < 400; ++round) {
    const Ratings ratings = scores(random, 0, 1);
    biased += far_biases(ratings).empty() ? 0 : 1;
    scattered += far_spreads(ratings).empty() ? 0 : 1;
  }
  CHECK(biased <= 400 * 9 / 100);
  CHECK(biased >= 400 * 2 / 100);
  CHECK(scattered <= 400 * 9 / 100);
}

}  // namespace
}  // namespace heelrule
