// What is refused as out of reach is out of reach.
#include <catch2/catch.hpp>

#include "engine/scoring/compile.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"
#include "tests/oracle/naive_grade.hpp"

namespace heelrule {
namespace {

// The grades of which `compile` says that no record can reach them.
std::vector<std::size_t> out_of_reach(const RuleSet& rules) {
  std::vector<std::size_t> grades;
  const auto program = compile(rules);
  for (const Diagnostic& diagnostic : program.diagnostics().by_place()) {
    for (std::size_t i = 0; i < rules.grades.size(); ++i) {
      if (diagnostic.message == "no record can reach grade `" + rules.grades[i].name.value + "`") {
        grades.push_back(i);
      }
    }
  }
  return grades;
}

TEST_CASE("no record reaches a grade that was refused as out of reach") {
  Dice dice(24);
  int refused = 0;
  for (int i = 0; i < 6000 && refused < 300; ++i) {
    RuleSet rules = random_rules(dice);
    rules.grades[0].from.value = static_cast<double>(50'000 + dice.below(50'001));
    rules.grades[1].from.value = static_cast<double>(1 + dice.below(50'000));
    if (rules.grades[1].from.value >= rules.grades[0].from.value) {
      continue;
    }
    const auto unreached = out_of_reach(rules);
    refused += unreached.empty() ? 0 : 1;
    for (int record = 0; record < 40 && !unreached.empty(); ++record) {
      const Inspection inspection = random_inspection(rules, dice);
      try {
        const NaiveVerdict verdict = naive_grade(rules, inspection);
        INFO(outline(rules) << outline(rules, inspection));
        for (const std::size_t grade : unreached) {
          REQUIRE(verdict.grade != grade);
        }
      } catch (const Undecided&) {
        continue;
      }
    }
  }
  CHECK(refused == 300);
}

}  // namespace
}  // namespace heelrule
