#include "engine/report/numerals.hpp"

#include <catch2/catch.hpp>
#include <limits>

#include "tests/laws/dice.hpp"

namespace heelrule {
namespace {

TEST_CASE("numbers have the digits of `shortest`, also when they come again") {
  Dice dice(90);
  Numerals numerals;
  std::vector<double> numbers{0,
                              -0.0,
                              100,
                              0.5,
                              77.3529411764706,
                              -1.2345678901234567e-300,
                              0.0000012345678901234567,
                              std::numeric_limits<double>::max()};
  for (int i = 0; i < 30'000; ++i) {
    numbers.push_back(static_cast<double>(dice.below(1'000'000)) /
                      static_cast<double>(1 + dice.below(999)));
  }
  for (int turn = 0; turn < 2; ++turn) {
    for (const double number : numbers) {
      numerals.expect(number);
      REQUIRE(numerals.of(number) == shortest(number));
    }
  }
}

}  // namespace
}  // namespace heelrule
