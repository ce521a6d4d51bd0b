// The engine and the second evaluator agree on rule sets and records at random.
#include <catch2/catch.hpp>

#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"
#include "tests/oracle/naive_grade.hpp"

namespace heelrule {
namespace {

TEST_CASE("engine and second evaluator agree on rule sets and records at random") {
  Dice dice(20'261'103);
  int agreed = 0;
  int undecided = 0;
  for (int i = 0; i < 3000; ++i) {
    const Program program = random_program(dice);
    for (int record = 0; record < 4; ++record) {
      const Inspection inspection = random_inspection(program.rules, dice);
      try {
        const NaiveVerdict naive = naive_grade(program.rules, inspection);
        const std::string difference = disagreement(grade(program, inspection), naive);
        INFO(outline(program.rules) << outline(program.rules, inspection));
        REQUIRE(difference == "");
        ++agreed;
      } catch (const Undecided&) {
        ++undecided;
      }
    }
  }
  CHECK(agreed + undecided == 12'000);
  CHECK(undecided < 120);
}

}  // namespace
}  // namespace heelrule
