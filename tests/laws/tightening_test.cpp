#include <catch2/catch.hpp>
#include <cmath>

#include "engine/scoring/compile.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

// Moves one cut point so that the band that earns less grows at the cost of the one that earns
// more, by half a millimetre or by the point alone. Nothing where no cut point of the rule can be
// moved so: straight lines are left alone, since they bend where their ends move.
bool tighten(Rule& rule, Dice& dice) {
  std::vector<std::size_t> movable;
  for (std::size_t i = 0; i + 1 < rule.bands.size(); ++i) {
    const Credit& below = rule.bands[i].earns.value;
    const Credit& above = rule.bands[i + 1].earns.value;
    if (!below.is_ramp() && !above.is_ramp() && below.from != above.from) {
      movable.push_back(i);
    }
  }
  if (movable.empty()) {
    return false;
  }
  const std::size_t at = dice.pick(movable);
  Cut& cut = *rule.bands[at].cut;
  const bool down = rule.bands[at].earns.value.from > rule.bands[at + 1].earns.value.from;
  if (cut.belongs_below == down && dice.one_in(2)) {
    cut.belongs_below = !cut.belongs_below;
    return true;
  }
  cut.at.stored += down ? -0.5 : 0.5;
  return true;
}

TEST_CASE("tightening a band never turns a fail into a pass, nor raises a score or a grade") {
  Dice dice(12);
  int tightened = 0;
  int lowered = 0;
  for (int i = 0; i < 12'000 && tightened < 2000; ++i) {
    const Program loose = random_program(dice);
    RuleSet rules = loose.rules;
    if (!tighten(rules.rules[dice.below(rules.rules.size())], dice)) {
      continue;
    }
    const auto tight = compile(rules);
    if (!tight) {
      continue;  // the cut point ran into its neighbour
    }
    ++tightened;
    for (int record = 0; record < 5; ++record) {
      const Inspection inspection = random_inspection(rules, dice);
      const Verdict before = grade(loose, inspection);
      const Verdict after = grade(*tight, inspection);
      INFO(outline(loose.rules) << outline(rules) << outline(rules, inspection));
      for (std::size_t at = 0; at < before.findings.size(); ++at) {
        const Finding& was = before.findings[at];
        const Finding& is = after.findings[at];
        if (was.status != Status::not_seen && was.status != Status::does_not_apply) {
          REQUIRE(is.credit <= was.credit);
          lowered += is.credit < was.credit ? 1 : 0;
        } else if (is.status != was.status) {
          // One side alone decides now, and it earns nothing.
          REQUIRE(is.status == Status::fail);
        }
      }
      REQUIRE(after.score.lowest_points() <= before.score.lowest_points());
      REQUIRE(after.score.highest_points() <= before.score.highest_points());
      REQUIRE(after.lowest_grade >= before.lowest_grade);
      REQUIRE(after.highest_grade >= before.highest_grade);
      if (before.score.weight == after.score.weight && before.grade) {
        REQUIRE(after.score.earned <= before.score.earned);
        REQUIRE(*after.grade >= *before.grade);
      }
    }
  }
  CHECK(tightened == 2000);
  CHECK(lowered > 100);
}

}  // namespace
}  // namespace heelrule
