#include "engine/quantity/random_sequence.hpp"

#include <array>
#include <catch2/catch.hpp>

namespace heelrule {
namespace {

// The first outputs for seed 1234567 are printed at
// https://rosettacode.org/wiki/Pseudo-random_numbers/Splitmix64 (from memory).
TEST_CASE("the sequence is the one that others print for the same seed") {
  RandomSequence random(1234567);
  for (const std::uint64_t expected :
       {6457827717110365317U, 3203168211198807973U, 9817491932198370423U, 4593380528125082431U,
        16408922859458223821U}) {
    CHECK(random.next() == expected);
  }
}

TEST_CASE("numbers below a count are about as likely as each other") {
  RandomSequence random(19);
  std::array<int, 7> found{};
  for (int i = 0; i < 70'000; ++i) {
    ++found.at(random.below(7));
  }
  for (const int count : found) {
    CHECK(count == Approx(10'000).margin(400));  // 4 standard deviations
  }
}

TEST_CASE("shares lie from 0 to below 1, with the mean and spread of even ones") {
  RandomSequence random(20);
  double sum = 0;
  double squares = 0;
  for (int i = 0; i < 100'000; ++i) {
    const double share = random.share();
    REQUIRE(share >= 0);
    REQUIRE(share < 1);
    sum += share;
    squares += share * share;
  }
  CHECK(sum / 100'000 == Approx(0.5).margin(0.004));
  CHECK(squares / 100'000 == Approx(1.0 / 3).margin(0.004));
}

}  // namespace
}  // namespace heelrule
