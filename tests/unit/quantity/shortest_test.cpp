#include <fast_float/fast_float.h>
#include <fmt/format.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "engine/quantity/decimal.hpp"
#include "tests/laws/dice.hpp"

namespace heelrule {
namespace {

std::string appended(double value) {
  std::string text = "x";
  append_shortest(text, value);
  return text.substr(1);
}

TEST_CASE("decimals are appended as people write them") {
  CHECK(appended(0) == "0");
  CHECK(appended(-0.0) == "0");
  CHECK(appended(0.05) == "0.05");
  CHECK(appended(-12.5) == "-12.5");
  CHECK(appended(243) == "243");
  CHECK(appended(0.001) == "0.001");
  CHECK(appended(1.0 / 3) == "0.3333333333333333");
  CHECK(appended(999'999'999'999) == "999999999999");
  CHECK(appended(1e12) == "1000000000000");
}

TEST_CASE("what is appended is the shortest text that reads back the same") {
  Dice dice(15);
  for (int i = 0; i < 300'000; ++i) {
    const auto whole = static_cast<double>(dice.below(std::size_t{1} << (1 + dice.below(50))));
    const double value = whole / std::pow(10.0, static_cast<double>(dice.below(8)));
    for (const double near : {value, -value, std::nextafter(value, 1e300), value / 3}) {
      const std::string text = appended(near);
      double back = 1;
      fast_float::from_chars(text.data(), text.data() + text.size(), back);
      REQUIRE(back == near);
      if (near != 0 && std::fabs(near) >= 1e-4) {
        REQUIRE(text == fmt::format("{}", near));
      }
    }
  }
}

}  // namespace
}  // namespace heelrule
