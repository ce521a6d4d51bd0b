#include <catch2/catch.hpp>

#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

constexpr double rounding = 1e-9;

// Calls `check` with the verdict on a record that lacks something, and with those on ten ways to
// complete it.
template <class Check>
void for_each_completion(std::uint64_t seed, const Check& check) {
  Dice dice(seed);
  for (int i = 0; i < 1500; ++i) {
    const Program program = random_program(dice);
    const Inspection inspection = random_inspection(program.rules, dice);
    const Verdict before = grade(program, inspection);
    for (int way = 0; way < 10; ++way) {
      const Inspection whole = completed(program.rules, inspection, dice);
      INFO(outline(program.rules) << outline(program.rules, inspection) << "completed:\n"
                                  << outline(program.rules, whole));
      check(before, grade(program, whole));
    }
  }
}

TEST_CASE("however a record is completed, the score ends where it was said to be able to end") {
  for_each_completion(8, [](const Verdict& before, const Verdict& after) {
    if (const auto points = after.score.points()) {
      REQUIRE(*points >= before.score.lowest_points() - rounding);
      REQUIRE(*points <= before.score.highest_points() + rounding);
    }
  });
}

TEST_CASE("however a record is completed, the grade ends between the worst and the best possible") {
  int provisional = 0;
  for_each_completion(9, [&](const Verdict& before, const Verdict& after) {
    if (after.grade) {
      provisional += before.stands ? 0 : 1;
      REQUIRE(*after.grade >= before.highest_grade);
      REQUIRE(*after.grade <= before.lowest_grade);
    }
  });
  CHECK(provisional > 1000);
}

TEST_CASE("however a record is completed, a grade that stands never changes") {
  int incomplete = 0;
  for_each_completion(10, [&](const Verdict& before, const Verdict& after) {
    if (before.stands) {
      incomplete += before.score.open_weight > 0 ? 1 : 0;
      REQUIRE(after.stands);
      REQUIRE(after.grade == before.grade);
    }
  });
  CHECK(incomplete > 1000);
}

bool settles(const Program& program, const Inspection& inspection, const Verdict& verdict,
             Dice& dice) {
  const Inspection whole = completed(program.rules, inspection, dice);
  Inspection recorded = inspection;
  for (const Observation& seen : whole.observations) {
    const bool asked = std::find(verdict.would_settle.begin(), verdict.would_settle.end(),
                                 Missing{seen.trait, seen.side}) != verdict.would_settle.end();
    if (asked) {
      std::erase_if(recorded.observations, [&](const Observation& other) {
        return other.trait == seen.trait && other.side == seen.side;
      });
      recorded.observations.push_back(seen);
    }
  }
  std::sort(recorded.observations.begin(), recorded.observations.end(),
            [](const Observation& a, const Observation& b) {
              return std::pair(a.trait, a.side) < std::pair(b.trait, b.side);
            });
  const Verdict after = grade(program, recorded);
  // A formula without a value, or a rule that turns out not to apply, leaves nothing to record.
  const bool nothing_to_record =
      std::any_of(after.findings.begin(), after.findings.end(),
                  [](const Finding& found) { return found.cannot_be_worked_out; });
  return after.stands || nothing_to_record || !after.grade;
}

TEST_CASE("to record all that would settle a provisional grade settles it") {
  Dice dice(11);
  int settled = 0;
  for (int i = 0; i < 4000; ++i) {
    const Program program = random_program(dice);
    const Inspection inspection = random_inspection(program.rules, dice);
    const Verdict verdict = grade(program, inspection);
    if (!verdict.stands) {
      INFO(outline(program.rules) << outline(program.rules, inspection));
      REQUIRE(settles(program, inspection, verdict, dice));
      ++settled;
    }
  }
  CHECK(settled > 1000);
}

}  // namespace
}  // namespace heelrule
