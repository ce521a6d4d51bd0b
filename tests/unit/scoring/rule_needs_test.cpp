#include "engine/scoring/rule_needs.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/doubt/doubted.hpp"

namespace heelrule {
namespace {

// `space` reads both lengths of each side through a formula, and applies by `laced`; `boot` is read
// by no rule.
Program sample() {
  const std::string rules =
      "title: House\nsections: {fit: {title: Fit}, wear: {title: Wear}}\ntraits:\n"
      "  boot: {ask: Boot, answer: yes or no}\n"
      "  laced: {ask: Laced, answer: yes or no}\n"
      "  foot: {ask: Foot, measure: mm, per: foot}\n"
      "  insole: {ask: Insole, measure: mm, per: shoe}\n"
      "  space: {ask: Space, derive: insole - foot}\n"
      "rules:\n"
      "  room: {section: wear, weight: 1, reads: space, applies: laced, because: It has to, "
      "source: "
      "common practice, bands: [{name: short, below: 6 mm, earns: 0}, {name: right, earns: 100 "
      "%}]}\n"
      "  ties: {section: fit, weight: 1, reads: laced, because: It has to, source: common "
      "practice, "
      "levels: {yes: 100 %, no: 0}}\n"
      "grades: {sound: {from: 50, means: Keep.}, unfit: {from: 0, means: Leave.}}\n";
  return graded(rules, "inspection: {rules: house}\nfound: {}\n").program;
}

constexpr std::size_t laced = 1;
constexpr std::size_t foot = 2;
constexpr std::size_t insole = 3;

TEST_CASE("a rule needs what its formulas read, on both sides, and what says whether it applies") {
  const Program program = sample();
  const auto inputs = inputs_needed(program, 0);
  CHECK(inputs.size() == 5);
  CHECK(std::is_sorted(inputs.begin(), inputs.end()));
  CHECK(traits_needed(program, 0) == std::vector{laced, foot, insole});
}

TEST_CASE("a rule that reads a recorded trait needs that trait alone") {
  CHECK(traits_needed(sample(), 1) == std::vector{laced});
}

TEST_CASE("a trait stands in the section of the first rule that needs it, and else in none") {
  const auto sections = sections_of_rules(sample());
  REQUIRE(sections.size() == 5);
  CHECK(!sections[0]);
  CHECK(sections[laced] == std::size_t{1});
  CHECK(sections[foot] == std::size_t{1});
  CHECK(sections[insole] == std::size_t{1});
  CHECK(!sections[4]);  // worked out, and not recorded
}

}  // namespace
}  // namespace heelrule
