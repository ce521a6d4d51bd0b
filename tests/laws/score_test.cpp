#include <catch2/catch.hpp>

#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

template <class Check>
void for_each_verdict(std::uint64_t seed, const Check& check) {
  Dice dice(seed);
  for (int i = 0; i < 3000; ++i) {
    const Program program = random_program(dice);
    const Inspection inspection = random_inspection(program.rules, dice);
    INFO(outline(program.rules) << outline(program.rules, inspection));
    check(program, grade(program, inspection));
  }
}

TEST_CASE("a score lies from 0 to 100, and so does all that it can still become") {
  for_each_verdict(13, [](const Program&, const Verdict& verdict) {
    const Score& score = verdict.score;
    REQUIRE(score.points().value_or(0) >= 0);
    REQUIRE(score.points().value_or(100) <= 100);
    REQUIRE(score.lowest_points() >= 0);
    REQUIRE(score.lowest_points() <= score.highest_points());
    REQUIRE(score.highest_points() <= 100);
    REQUIRE(verdict.highest_grade <= verdict.lowest_grade);
  });
}

TEST_CASE("a score and its grade lie within what they can still become") {
  for_each_verdict(23, [](const Program&, const Verdict& verdict) {
    if (const auto points = verdict.score.points()) {
      REQUIRE(*points >= verdict.score.lowest_points());
      REQUIRE(*points <= verdict.score.highest_points());
      REQUIRE(*verdict.grade >= verdict.highest_grade);
      REQUIRE(*verdict.grade <= verdict.lowest_grade);
    }
  });
}

TEST_CASE("where nothing is open the score and the grade are all that they can become") {
  int complete = 0;
  for_each_verdict(14, [&](const Program&, const Verdict& verdict) {
    const bool open = std::any_of(verdict.findings.begin(), verdict.findings.end(),
                                  [](const Finding& f) { return f.status == Status::not_seen; });
    if (!open && verdict.score.points()) {
      ++complete;
      REQUIRE(verdict.score.lowest_points() == *verdict.score.points());
      REQUIRE(verdict.score.highest_points() == *verdict.score.points());
      REQUIRE(verdict.lowest_grade == *verdict.grade);
      REQUIRE(verdict.highest_grade == *verdict.grade);
      REQUIRE(verdict.stands);
      REQUIRE(verdict.would_settle.empty());
    }
  });
  CHECK(complete > 500);
}

TEST_CASE("the sections add up to the whole, and so do the findings") {
  for_each_verdict(15, [](const Program&, const Verdict& verdict) {
    Score sections;
    for (const Score& section : verdict.sections) {
      sections.earned += section.earned;
      sections.weight += section.weight;
      sections.open_weight += section.open_weight;
    }
    REQUIRE((sections == verdict.score));
    double earned = 0;
    for (const Finding& found : verdict.findings) {
      earned += found.weight * found.credit;
    }
    REQUIRE(earned == verdict.score.earned);
  });
}

TEST_CASE("a finding that passed in full would gain nothing, and the gains make up the rest") {
  for_each_verdict(16, [](const Program&, const Verdict& verdict) {
    double gains = 0;
    for (const Finding& found : verdict.findings) {
      REQUIRE(found.gain >= 0);
      REQUIRE((found.status != Status::pass || found.gain == 0));
      gains += found.gain;
    }
    if (const auto points = verdict.score.points()) {
      REQUIRE(*points + gains == Approx(100));
    }
  });
}

TEST_CASE("a grade is never better than a failed must leaves, nor than its score") {
  for_each_verdict(17, [](const Program& program, const Verdict& verdict) {
    if (!verdict.grade) {
      return;
    }
    std::size_t expected = *verdict.uncapped;
    for (const Finding& found : verdict.findings) {
      const auto& must = program.rules.rules[found.rule].caps;
      if (must && found.status == Status::fail) {
        expected = std::max(expected, *program.rules.find_grade(must->value));
        REQUIRE(found.cap == program.rules.find_grade(must->value));
      } else {
        REQUIRE(found.cap == std::nullopt);
      }
    }
    REQUIRE(*verdict.grade == expected);
  });
}

}  // namespace
}  // namespace heelrule
