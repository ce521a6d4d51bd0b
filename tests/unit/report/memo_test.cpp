#include "engine/report/memo.hpp"

#include <catch2/catch.hpp>
#include <limits>
#include <string>

namespace heelrule {
namespace {

// Asks for `count` readings from 200 steps on, `turns` times over, and tells how many texts were
// made.
int made_of(Memo& memo, double step, int count, int turns) {
  int made = 0;
  for (int turn = 0; turn < turns; ++turn) {
    for (int i = 0; i < count; ++i) {
      const double key = (200 + i) * step;
      REQUIRE(memo.get(key,
                       [&] {
                         ++made;
                         return "a text of " + std::to_string(key);
                       })
                  .text() == "a text of " + std::to_string(key));
    }
  }
  return made;
}

TEST_CASE("each of some hundred readings has its text, which is made once") {
  for (const double step : {1.0, 0.5, 0.1, 0.01, 7.0, 2629800.0}) {
    Memo memo;
    CAPTURE(step);
    CHECK(made_of(memo, step, 200, 5) <= 230);
  }
}

TEST_CASE("with more readings than there is room for, each still has its own text") {
  Memo memo;
  CHECK(made_of(memo, 0.25, 20'000, 2) >= 20'000);
}

TEST_CASE("zero, minus zero and what is no number are three keys") {
  Memo memo;
  CHECK(memo.get(0.0, [] { return std::string("zero"); }).text() == "zero");
  CHECK(memo.get(-0.0, [] { return std::string("minus zero"); }).text() == "minus zero");
  constexpr double nothing = std::numeric_limits<double>::quiet_NaN();
  CHECK(memo.get(nothing, [] { return std::string("nothing"); }).text() == "nothing");
  CHECK(memo.get(nothing, [] { return std::string("made again"); }).text() == "nothing");
  CHECK(memo.get(0.0, [] { return std::string("made again"); }).text() == "zero");
}

}  // namespace
}  // namespace heelrule
