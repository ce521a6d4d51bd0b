#include <catch2/catch.hpp>

#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

// Scores are quotients of exact sums, so two that are equal on paper differ by their rounding
// alone.
constexpr double rounding = 1e-9;

Inspection without(const Inspection& inspection, std::size_t observation) {
  Inspection other = inspection;
  other.observations.erase(other.observations.begin() + static_cast<std::ptrdiff_t>(observation));
  return other;
}

bool is_decided(const Finding& found) { return found.status != Status::not_seen; }

// Calls `check` with the verdict on a record, and the one on the same record without one reading.
template <class Check>
void for_each_reading_taken_away(std::uint64_t seed, const Check& check) {
  Dice dice(seed);
  for (int i = 0; i < 1500; ++i) {
    const Program program = random_program(dice);
    const Inspection inspection = random_inspection(program.rules, dice);
    const Verdict whole = grade(program, inspection);
    for (std::size_t taken = 0; taken < inspection.observations.size(); ++taken) {
      INFO(outline(program.rules) << outline(program.rules, inspection) << "without the reading "
                                  << taken);
      check(whole, grade(program, without(inspection, taken)));
    }
  }
}

TEST_CASE("a reading taken away makes findings not seen, and never a fail") {
  for_each_reading_taken_away(5, [](const Verdict& whole, const Verdict& less) {
    for (std::size_t i = 0; i < less.findings.size(); ++i) {
      if (is_decided(less.findings[i])) {
        REQUIRE(less.findings[i].status == whole.findings[i].status);
        REQUIRE(less.findings[i].credit == whole.findings[i].credit);
      }
    }
  });
}

TEST_CASE("a reading taken away never narrows what the score and the grade can still become") {
  for_each_reading_taken_away(6, [](const Verdict& whole, const Verdict& less) {
    REQUIRE(less.score.lowest_points() <= whole.score.lowest_points() + rounding);
    REQUIRE(less.score.highest_points() >= whole.score.highest_points() - rounding);
    REQUIRE(less.lowest_grade >= whole.lowest_grade);
    REQUIRE(less.highest_grade <= whole.highest_grade);
  });
}

TEST_CASE("a grade that stands without a reading stood with it, and was the same") {
  int stood = 0;
  for_each_reading_taken_away(7, [&](const Verdict& whole, const Verdict& less) {
    if (less.stands) {
      ++stood;
      REQUIRE(whole.stands);
      REQUIRE(whole.grade == less.grade);
    }
  });
  CHECK(stood > 1000);
}

}  // namespace
}  // namespace heelrule
