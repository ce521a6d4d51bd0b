#include "engine/doubt/better_grades.hpp"

#include <algorithm>
#include <bit>
#include <catch2/catch.hpp>

#include "engine/scoring/grade.hpp"
#include "tests/unit/doubt/doubted.hpp"

namespace heelrule {
namespace {

const std::string bench = house(
    "  length: {ask: Length, measure: mm, per: shoe}\n"
    "  insole: {ask: Insole, scale: [broken, flat, springy]}\n"
    "  heel: {ask: Heel, scale: [slips, lifts, holds]}\n"
    "  dry: {ask: Dry, answer: yes or no}\n"
    "  laced: {ask: Laced, answer: yes or no}\n",
    rule("length", "4",
         "bands: [{name: short, below: 250 mm, earns: 0}, {name: right, up to: 255 mm, earns: 100 "
         "%}, {name: long, earns: 50 %}]") +
        rule("insole", "3", "levels: {broken: 0, flat: 50 %, springy: 100 %}") +
        rule("heel", "2", "levels: {slips: 0, lifts: 50 %, holds: 100 %}") +
        rule("dry", "1", "levels: {yes: 100 %, no: 0}"),
    "changes:\n"
    "  dry_out: {title: Dry it, sets: {dry: yes}, source: common practice}\n"
    "  lace: {title: Lace it, applies: laced, sets: {heel: holds}, source: common practice}\n"
    "  new_insole: {title: New insole, sets: {insole: springy}, source: common practice}\n"
    "  longer: {title: Longer, adds: {length: 5 mm}, source: common practice}\n"
    "  much_longer: {title: Much longer, adds: {length: 12 mm}, sets: {heel: lifts}, source: "
    "common practice}\n");

constexpr std::size_t dry_out = 0;
constexpr std::size_t new_insole = 2;
constexpr std::size_t longer = 3;
constexpr std::size_t much_longer = 4;

std::vector<BetterGrade> better(const std::string& found) {
  const Doubted sample = doubted(bench, found);
  return better_grades(sample.program, sample.inspection, *sample.verdict.grade);
}

std::optional<std::vector<std::size_t>> way(std::vector<std::size_t> changes) { return changes; }

// 0 of 4, 1.5 of 3, 1 of 2, 0 of 1: 25 points. With the length 65, and with the insole 80.
TEST_CASE("each better grade has its smallest set of changes") {
  const auto found = better("{length: 247 mm, insole: flat, heel: lifts, dry: no, laced: yes}");
  REQUIRE(found.size() == 2);
  CHECK(found[0] == BetterGrade{0, way({new_insole, longer})});
  CHECK(found[1] == BetterGrade{1, way({longer})});
}

TEST_CASE("the best grade has nothing above it") {
  CHECK(better("{length: 252 mm, insole: springy, heel: holds, dry: yes, laced: yes}").empty());
}

TEST_CASE("of two sets of one size the first in the order of the rule set is taken") {
  // 4, 3, 0 and 0 of 10 are 70 points: dry makes 80, and so would a heel that holds.
  const auto found = better("{length: 252 mm, insole: springy, heel: slips, dry: no, laced: yes}");
  REQUIRE(found.size() == 1);
  CHECK(found[0].changes == way({dry_out}));
}

TEST_CASE("a change that does not apply is none, and neither is one whose condition is open") {
  // 4, 1.5 and 0 and 1 of 10: 65 points. Only the insole alone reaches 80.
  for (const std::string laced : {"no", "not seen"}) {
    const auto found =
        better("{length: 252 mm, insole: springy, heel: slips, dry: yes, laced: " + laced + "}");
    CHECK(found.empty());  // 80 points already
    const auto lower =
        better("{length: 247 mm, insole: springy, heel: slips, dry: yes, laced: " + laced + "}");
    REQUIRE(lower.size() == 2);
    CHECK(lower[0].changes == way({longer}));
  }
}

TEST_CASE("a grade that no change reaches is said to be out of reach") {
  // All that can be mended is the insole, 3 of 10, dry, 1, and half of the heel, 1: 50 points.
  const auto found = better("{length: 230 mm, insole: broken, heel: slips, dry: no, laced: no}");
  REQUIRE(found.size() == 2);
  CHECK_FALSE(found[0].changes);
  CHECK(found[1].changes == way({dry_out, new_insole, much_longer}));
  const auto mended = better("{length: 230 mm, insole: springy, heel: lifts, dry: yes, laced: no}");
  REQUIRE(mended.size() == 1);
  CHECK_FALSE(mended[0].changes);
}

// Another way to the same: every combination, made a record of its own and graded anew.
TEST_CASE("what is found reaches the grade, and no smaller set does") {
  for (const std::string length : {"238 mm", "246 mm", "249 mm", "252 mm", "258 mm"}) {
    for (const std::string insole : {"broken", "flat", "springy"}) {
      for (const std::string heel : {"slips", "holds"}) {
        const Doubted sample = doubted(bench, "{length: " + length + ", insole: " + insole +
                                                  ", heel: " + heel + ", dry: no, laced: yes}");
        const auto grade_with = [&](unsigned set) -> std::optional<std::size_t> {
          Inspection changed = sample.inspection;
          std::vector<std::size_t> moved;
          for (std::size_t i = 0; i < sample.program.rules.changes.size(); ++i) {
            if (((set >> i) & 1U) == 0) {
              continue;
            }
            for (const MovedTrait& one : sample.program.rules.changes[i].moves) {
              if (std::find(moved.begin(), moved.end(), one.trait) != moved.end()) {
                return std::nullopt;
              }
              moved.push_back(one.trait);
              for (Observation& seen : changed.observations) {
                if (seen.trait != one.trait) {
                  continue;
                }
                if (auto* readings = std::get_if<Readings>(&seen.value)) {
                  readings->stored[0] += one.amount;
                } else if (auto* level = std::get_if<LevelSeen>(&seen.value)) {
                  level->level = static_cast<std::size_t>(one.amount);
                } else {
                  seen.value = Answer{one.amount == 1};
                }
              }
            }
          }
          return grade(sample.program, changed).grade;
        };
        const auto found = better_grades(sample.program, sample.inspection, *sample.verdict.grade);
        REQUIRE(found.size() == *sample.verdict.grade);
        for (const BetterGrade& one : found) {
          std::optional<int> fewest;
          for (unsigned set = 1; set < 32; ++set) {
            const auto reached = grade_with(set);
            if (reached && *reached <= one.grade) {
              fewest = std::min(fewest.value_or(99), std::popcount(set));
            }
          }
          CAPTURE(length, insole, heel, one.grade);
          CHECK(one.changes.has_value() == fewest.has_value());
          if (one.changes && fewest) {
            CHECK(static_cast<int>(one.changes->size()) == *fewest);
            unsigned set = 0;
            for (const std::size_t change : *one.changes) {
              set |= 1U << change;
            }
            CHECK(grade_with(set).value_or(99) <= one.grade);
          }
        }
      }
    }
  }
}

}  // namespace
}  // namespace heelrule
