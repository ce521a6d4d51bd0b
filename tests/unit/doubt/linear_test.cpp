#include "engine/doubt/linear.hpp"

#include <catch2/catch.hpp>
#include <cmath>

#include "engine/doubt/draws.hpp"
#include "tests/unit/doubt/doubted.hpp"

namespace heelrule {
namespace {

// The uncertainty of a derived trait `d` of lengths a (2 mm) and b (3 mm), and of an exact c.
std::optional<double> of(const std::string& formula,
                         const std::string& found = "{a: 100 mm, b: 50 mm, c: 4 mm}") {
  const Doubted sample = doubted(
      house("  a: {ask: A, measure: mm, doubt: 2 mm}\n  b: {ask: B, measure: mm, doubt: 3 mm}\n"
            "  c: {ask: C, measure: mm}\n  d: {ask: D, derive: \"" +
                formula + "\"}\n",
            rule("d", "1",
                 "bands: [{name: low, below: 9 mm, earns: 0}, {name: high, up to: 900 mm, earns: "
                 "100 %}, {name: far, earns: 50 %}]")),
      found);
  Block block(sample.program);
  fill_rows(sample.program, sample.inspection, block);
  evaluate(sample.program, block);
  const auto all = linear_uncertainties(sample.program, block, sample.doubt.readings);
  return all[sample.program.traits[3].values[0]];
}

// JCGM 100, 5.1.2: the squares of the parts add up.
TEST_CASE("sums and differences add the squares of their doubts") {
  CHECK(of("a - b") == Approx(std::sqrt(13)));
  CHECK(of("a + b + c") == Approx(std::sqrt(13)));
  CHECK(of("-a") == Approx(2));
  CHECK(of("3 * a - b / 2") == Approx(std::sqrt(36 + 2.25)));
  CHECK(of("mean(a, b)") == Approx(std::sqrt(13) / 2));
}

TEST_CASE("a reading that two terms share is counted once") {
  CHECK(of("a - b + a") == Approx(5));  // 2a and b: 4 and 3
  CHECK(of("a - a + b") == Approx(3));
}

TEST_CASE("an exact value has no doubt, and multiplies that of others") {
  CHECK(of("c * 2") == Approx(0));
  CHECK(of("a * (c / 1 mm)") == Approx(8));
  CHECK(of("if c > 3 mm then c else 2 * c") == Approx(0));
}

TEST_CASE("what is no sum of multiples is left to draws") {
  CHECK_FALSE(of("max(a, b)"));
  CHECK_FALSE(of("a * b / 1 mm"));
  CHECK_FALSE(of("c / (a / b)"));
  CHECK_FALSE(of("if a > b then c else 2 * c"));
}

TEST_CASE("what was not seen has no doubt that could be known") {
  CHECK_FALSE(of("a - b", "{a: 100 mm, c: 4 mm}"));
}

}  // namespace
}  // namespace heelrule
