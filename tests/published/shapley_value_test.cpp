// Shapley values of games whose values are published.
#include <bit>
#include <catch2/catch.hpp>

#include "engine/marking/attribution.hpp"

namespace heelrule {
namespace {

std::size_t members(std::size_t group) { return static_cast<std::size_t>(std::popcount(group)); }

// Shapley and Shubik, A method for evaluating the distribution of power in a committee system,
// American Political Science Review 48 (1954), for the United Nations Security Council as enlarged
// in 1965: five permanent members, each with a veto, and ten others, four of whom must agree. The
// index of a permanent member is 421/2145 and of another one 4/2145 (from memory; a permanent one
// decides where all four others and four to ten of the rest came before, which adds up to that).
TEST_CASE("the power of the members of the Security Council") {
  constexpr std::size_t permanent = 0b11111;
  std::vector<double> worth(std::size_t{1} << 15U);
  for (std::size_t group = 0; group < worth.size(); ++group) {
    const bool passes = (group & permanent) == permanent && members(group >> 5U) >= 4;
    worth[group] = passes ? 1 : 0;
  }
  const std::vector<double> values = shapley_values(15, worth);
  for (std::size_t i = 0; i < values.size(); ++i) {
    CHECK(values[i] == Approx(i < 5 ? 421.0 / 2145 : 4.0 / 2145).epsilon(1e-12));
  }
}

// Littlechild and Owen, A simple expression for the Shapley value in a special case, Management
// Science 20 (1973): a group pays for the longest runway that one of it needs; each stretch is
// shared evenly by those who need it (rule from memory; costs of 8, 11, 13 and 18 as in textbooks).
TEST_CASE("the cost of a runway is shared stretch by stretch") {
  const std::vector<double> costs{8, 11, 13, 18};
  std::vector<double> worth(16, 0);
  for (std::size_t group = 0; group < worth.size(); ++group) {
    for (std::size_t i = 0; i < costs.size(); ++i) {
      if ((group >> i & 1U) != 0) {
        worth[group] = costs[i];
      }
    }
  }
  const std::vector<double> values = shapley_values(4, worth);
  CHECK(values[0] == Approx(2));
  CHECK(values[1] == Approx(3));
  CHECK(values[2] == Approx(4));
  CHECK(values[3] == Approx(9));
}

// The glove game of every textbook (from memory): two own a left glove, one a right; a pair is
// worth
// 1. The one with the right glove gets 4/6.
TEST_CASE("gloves are worth something in pairs alone") {
  const std::vector<double> values = shapley_values(3, {0, 0, 0, 0, 0, 1, 1, 1});
  CHECK(values[0] == Approx(1.0 / 6));
  CHECK(values[1] == Approx(1.0 / 6));
  CHECK(values[2] == Approx(4.0 / 6));
}

}  // namespace
}  // namespace heelrule
