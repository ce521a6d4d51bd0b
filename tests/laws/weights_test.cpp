#include <catch2/catch.hpp>

#include "engine/scoring/compile.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

// A rule without weight that reads a trait which nobody recorded.
void add_unseen(RuleSet& rules) {
  Trait spare;
  spare.name = "spare";
  spare.kind = AnswerKind{};
  rules.traits.push_back(spare);
  Rule rule = rules.rules.front();
  rule.name = "spare";
  rule.weight.value = 0;
  rule.caps.reset();
  rule.applies.reset();
  rule.sides = SideRule::worse;
  rule.reads.value = "spare";
  rule.bands.clear();
  rule.levels.resize(2);
  rule.levels[0].level.value = "yes";
  rule.levels[0].earns.value = {0, 0};
  rule.levels[1].level.value = "no";
  rule.levels[1].earns.value = {full_credit, full_credit};
  rules.rules.push_back(rule);
}

TEST_CASE("rules that weigh nothing change neither score nor grade nor what would settle it") {
  Dice dice(18);
  for (int i = 0; i < 1500; ++i) {
    const Program program = random_program(dice);
    RuleSet more = program.rules;
    for (int added = 0; added < 3; ++added) {
      Rule weightless = dice.pick(program.rules.rules);
      weightless.name += "_again";
      weightless.weight.value = 0;
      weightless.caps.reset();
      more.rules.push_back(weightless);
    }
    add_unseen(more);
    const auto other = compile(more);
    REQUIRE(other);
    const Inspection inspection = random_inspection(program.rules, dice);
    const Verdict verdict = grade(program, inspection);
    const Verdict same = grade(*other, inspection);
    INFO(outline(more) << outline(program.rules, inspection));
    REQUIRE((same.score == verdict.score));
    REQUIRE(same.grade == verdict.grade);
    REQUIRE(same.lowest_grade == verdict.lowest_grade);
    REQUIRE(same.highest_grade == verdict.highest_grade);
    REQUIRE(same.stands == verdict.stands);
    REQUIRE((same.would_settle == verdict.would_settle));
  }
}

TEST_CASE("only the proportions of weights count") {
  Dice dice(19);
  for (int i = 0; i < 1500; ++i) {
    const Program program = random_program(dice);
    RuleSet heavier = program.rules;
    const auto times = static_cast<double>(2 + dice.below(99));
    for (Rule& rule : heavier.rules) {
      rule.weight.value *= times;
    }
    const auto other = compile(heavier);
    REQUIRE(other);
    const Inspection inspection = random_inspection(program.rules, dice);
    const Verdict verdict = grade(program, inspection);
    const Verdict same = grade(*other, inspection);
    CAPTURE(times);
    INFO(outline(program.rules) << outline(program.rules, inspection));
    REQUIRE(same.score.points() == verdict.score.points());
    REQUIRE(same.score.lowest_points() == verdict.score.lowest_points());
    REQUIRE(same.score.highest_points() == verdict.score.highest_points());
    REQUIRE(same.grade == verdict.grade);
    REQUIRE(same.lowest_grade == verdict.lowest_grade);
    REQUIRE(same.highest_grade == verdict.highest_grade);
    REQUIRE(same.stands == verdict.stands);
    REQUIRE((same.would_settle == verdict.would_settle));
  }
}

}  // namespace
}  // namespace heelrule
