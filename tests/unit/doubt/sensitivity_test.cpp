#include "engine/doubt/sensitivity.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/doubt/doubted.hpp"

namespace heelrule {
namespace {

// Credit on a straight line over a whole metre: the score is a sum of multiples of the readings.
const std::string line =
    "bands: [{name: low, below: 0 mm, earns: 0}, {name: line, up to: 1000 mm, earns: 0 % .. 100 "
    "%}, "
    "{name: high, earns: 100 %}]";

std::string trait(const std::string& name, const std::string& doubt) {
  return "  " + name + ": {ask: Ask " + name + ", measure: mm, doubt: " + doubt + "}\n";
}

// The variance of a sum is the sum of (weight · u)²: here 2², 6² and 3², which is 49.
TEST_CASE("of a linear score each share is that of its square") {
  const Doubted sample =
      doubted(house(trait("a", "2 mm") + trait("b", "2 mm") + trait("c", "3 mm"),
                    rule("a", "1", line) + rule("b", "3", line) + rule("c", "1", line)),
              "{a: 500 mm, b: 500 mm, c: 500 mm}");
  const auto found =
      effects(sample.program, sample.inspection, sample.doubt.readings, Target::score);
  REQUIRE(found.size() == 3);
  const std::vector<double> known{4 / 49.0, 36 / 49.0, 9 / 49.0};
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(found[i].first == Approx(known[i]).margin(0.04));
    CHECK(found[i].total == Approx(known[i]).margin(0.04));
  }
}

// The grade is sound if both pass, and each does as often as not: of the variance 3/16 the mean
// over the other leaves 1/16, so a third is each one's own and a third is theirs together.
TEST_CASE("where two readings must both be right, a part is theirs together") {
  const std::string limit =
      "bands: [{name: short, below: 10 mm, earns: 0}, "
      "{name: right, up to: 900 mm, earns: 100 %}, {name: far, earns: 50 %}]";
  const Doubted sample =
      doubted("title: House\nsections: {fit: {title: Fit}}\ntraits:\n" + trait("a", "1 mm") +
                  trait("b", "1 mm") + "rules:\n" + rule("a", "1", limit) + rule("b", "1", limit) +
                  "grades: {sound: {from: 100, means: Keep.}, unfit: {from: 0, means: Leave.}}\n",
              "{a: 10 mm, b: 10 mm}");
  const auto found =
      effects(sample.program, sample.inspection, sample.doubt.readings, Target::grade);
  REQUIRE(found.size() == 2);
  for (const Effect& effect : found) {
    CHECK(effect.first == Approx(1 / 3.0).margin(0.04));
    CHECK(effect.total == Approx(2 / 3.0).margin(0.04));
  }
}

TEST_CASE("what to read again first is what the grade hangs on") {
  const std::string limit =
      "bands: [{name: short, below: 10 mm, earns: 0}, "
      "{name: right, up to: 900 mm, earns: 100 %}, {name: far, earns: 50 %}]";
  const Doubted sample = doubted(
      house(trait("far", "1 mm") + trait("near", "1 mm") + trait("light", "1 mm"),
            rule("far", "6", limit) + rule("near", "5", limit) + rule("light", "0.1", limit)),
      "{far: 20 mm, near: 10.5 mm, light: 10 mm}");
  const Doubt& doubt = sample.doubt;
  CHECK(doubt.target == Target::grade);
  REQUIRE_FALSE(doubt.take_again.empty());
  CHECK(doubt.take_again[0].reading == 1);
  CHECK(doubt.take_again[0].effect.first > 0.9);
  for (const ReadingEffect& one : doubt.take_again) {
    CHECK(one.reading != 0);  // no draw of it ever fails
  }
}

TEST_CASE("where the grade is certain, the score tells what to read again") {
  const Doubted sample = doubted(
      house(trait("a", "2 mm") + trait("b", "6 mm"), rule("a", "1", line) + rule("b", "1", line)),
      "{a: 900 mm, b: 900 mm}");
  CHECK(sample.doubt.target == Target::score);
  REQUIRE(sample.doubt.take_again.size() == 2);
  CHECK(sample.doubt.take_again[0].reading == 1);
}

}  // namespace
}  // namespace heelrule
