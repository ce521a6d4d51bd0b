#include <catch2/catch.hpp>

#include "engine/quantity/decimal.hpp"
#include "engine/report/value_words.hpp"
#include "engine/scoring/check_grades.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

// The printed number times `factor`, rounded once.
double read_back(std::string_view words, std::uint32_t factor = 1) {
  const auto number = parse_decimal(words.substr(0, words.find(' ')));
  REQUIRE(number);
  return scaled(*number, factor);
}

std::size_t grade_of_printed(const std::vector<GradeBound>& bounds, std::string_view words) {
  return grade_of(bounds, read_back(words, 10'000), 1);
}

TEST_CASE("the printed score of a record gives the grade that its exact score gives") {
  Dice dice(20);
  for (int i = 0; i < 3000; ++i) {
    const Program program = random_program(dice);
    const Verdict verdict = grade(program, random_inspection(program.rules, dice));
    if (const auto points = verdict.score.points()) {
      const std::string words = score_words(*points, program.grade_bounds);
      CAPTURE(*points, words);
      REQUIRE(grade_of_printed(program.grade_bounds, words) == *verdict.uncapped);
    }
  }
}

TEST_CASE(
    "a score a hair beside a boundary is printed on its own side, wherever that boundary is") {
  Dice dice(21);
  for (int i = 0; i < 20'000; ++i) {
    const std::vector<GradeBound> bounds{static_cast<double>(50'001 + dice.below(50'000)),
                                         static_cast<double>(1 + dice.below(50'000)), 0};
    const auto weight = static_cast<double>(1'000 + dice.below(1'000'000'000));
    // The nearest sums on both sides of the boundary, and on it where there is one.
    const double least = std::ceil(dice.pick(bounds) * 10 * weight);
    const double earned = std::max(0.0, least - 1 + static_cast<double>(dice.below(3)));
    Score score;
    score.earned = earned;
    score.weight = weight;
    const std::string words = score_words(*score.points(), bounds);
    CAPTURE(earned, weight, words, bounds[0], bounds[1]);
    REQUIRE(grade_of_printed(bounds, words) == grade_of(bounds, earned, weight));
  }
}

TEST_CASE("a printed value lies in the band that its exact value lies in") {
  Dice dice(22);
  std::size_t printed = 0;
  for (int i = 0; i < 3000; ++i) {
    const Program program = random_program(dice);
    const Inspection inspection = random_inspection(program.rules, dice);
    const Verdict verdict = grade(program, inspection);
    INFO(outline(program.rules) << outline(program.rules, inspection));
    for (const Finding& found : verdict.findings) {
      const RuleProgram& rule = program.rule_programs[found.rule];
      if (program.rules.rules[found.rule].bands.empty()) {
        continue;
      }
      for (const SideReading& reading : found.readings) {
        const std::string words = value_words(program, rule.trait, reading.value, rule.cuts);
        CAPTURE(reading.value, words);
        REQUIRE(rule.scale.band(read_back(words)) == reading.band);
        ++printed;
      }
    }
  }
  CHECK(printed > 5000);
}

}  // namespace
}  // namespace heelrule
