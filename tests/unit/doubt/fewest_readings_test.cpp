#include "engine/doubt/fewest_readings.hpp"

#include <catch2/catch.hpp>

#include "engine/scoring/grade.hpp"
#include "tests/unit/doubt/doubted.hpp"

namespace heelrule {
namespace {

const std::string limit =
    "bands: [{name: short, below: 10 mm, earns: 0}, "
    "{name: right, up to: 900 mm, earns: 100 %}, {name: far, earns: 50 %}]";

// Rules of equal weight that all pass, each 1.5 mm above its limit with 1 mm of doubt: two standard
// uncertainties less, and it fails. Sound from 80, usable from 50.
Doubted of_gaps(std::size_t count) {
  std::string traits;
  std::string rules;
  std::string found = "{";
  for (std::size_t i = 0; i < count; ++i) {
    const std::string name = "gap" + std::to_string(i);
    traits += "  " + name + ": {ask: Gap, measure: mm, doubt: 1 mm}\n";
    rules += rule(name, "1", limit);
    found += (i > 0 ? ", " : "") + name + ": 11.5 mm";
  }
  return doubted(house(traits, rules), found + "}");
}

FewestReadings fewest(const Doubted& sample) {
  return fewest_readings(sample.program, sample.inspection, sample.doubt.readings,
                         *sample.verdict.grade);
}

TEST_CASE("one reading is enough where one rule in four decides") {
  const FewestReadings found = fewest(of_gaps(4));  // 3 of 4 are 75 points
  REQUIRE(found.move);
  CHECK(found.move->readings == std::vector<OffReading>{{0, false}});
  CHECK(found.move->grade == 1);
  CHECK(found.tried == 1);
}

TEST_CASE("two are needed where one leaves the score on its boundary") {
  const FewestReadings found = fewest(of_gaps(5));  // 4 of 5 are 80 points
  REQUIRE(found.move);
  CHECK(found.move->readings == std::vector<OffReading>{{0, false}, {1, false}});
  CHECK(found.tried == 2);
}

TEST_CASE("three are tried, and no more") {
  CHECK(fewest(of_gaps(14)).move->readings.size() == 3);
  const FewestReadings none = fewest(of_gaps(15));  // 12 of 15 are 80 points
  CHECK_FALSE(none.move);
  CHECK(none.tried == 3);
}

TEST_CASE("two readings of one difference add up") {
  const Doubted sample = doubted(
      house("  insole: {ask: I, measure: mm, doubt: 1 mm}\n"
            "  foot: {ask: F, measure: mm, doubt: 1 mm}\n  gap: {ask: G, derive: insole - foot}\n",
            rule("gap", "1", limit)),
      "{insole: 258.5 mm, foot: 245 mm}");
  const FewestReadings found = fewest(sample);
  REQUIRE(found.move);
  CHECK(found.move->readings == std::vector<OffReading>{{0, false}, {1, true}});
  CHECK(found.move->grade == 2);
}

TEST_CASE("a level goes as far as its scale does") {
  const std::string counter =
      house("  counter: {ask: C, scale: [soft, medium, hard, firm], confusion: 10 %}\n",
            rule("counter", "1", "levels: {soft: 0, medium: 100 %, hard: 60 %, firm: 60 %}"));
  CHECK_FALSE(fewest(doubted(counter, "{counter: firm}")).move);
  CHECK(fewest(doubted(counter, "{counter: medium}")).move->readings ==
        std::vector<OffReading>{{0, false}});
}

// Against the plain way: every single reading by itself, graded anew from a changed record.
TEST_CASE("what is found moves the grade, and nothing smaller does") {
  for (const std::size_t count : {4U, 5U, 9U, 12U, 15U}) {
    const Doubted sample = of_gaps(count);
    const FewestReadings found = fewest(sample);
    const auto grade_with = [&](const std::vector<OffReading>& off) {
      Inspection changed = sample.inspection;
      for (const OffReading& one : off) {
        const DoubtfulReading& reading = sample.doubt.readings[one.reading];
        std::get<Readings>(changed.observations[reading.trait].value).stored = {
            a_little_off(reading, one.up)};
      }
      return *grade(sample.program, changed).grade;
    };
    if (found.move) {
      CHECK(grade_with(found.move->readings) == found.move->grade);
      CHECK(found.move->grade != *sample.verdict.grade);
      std::vector<OffReading> fewer = found.move->readings;
      fewer.pop_back();
      CHECK(grade_with(fewer) == *sample.verdict.grade);
    }
  }
}

}  // namespace
}  // namespace heelrule
