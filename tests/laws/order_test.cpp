#include <fmt/format.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <numeric>

#include "engine/scoring/compile.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

std::vector<std::size_t> shuffled(std::size_t count, Dice& dice) {
  std::vector<std::size_t> order(count);
  std::iota(order.begin(), order.end(), std::size_t{0});
  dice.shuffle(order);
  return order;
}

RuleSet with_rules_in(const RuleSet& rules, const std::vector<std::size_t>& order) {
  RuleSet other = rules;
  for (std::size_t i = 0; i < order.size(); ++i) {
    other.rules[i] = rules.rules[order[i]];
  }
  return other;
}

RuleSet with_traits_in(const RuleSet& rules, const std::vector<std::size_t>& order) {
  RuleSet other = rules;
  for (std::size_t i = 0; i < order.size(); ++i) {
    other.traits[i] = rules.traits[order[i]];
  }
  return other;
}

// The same record against the rule set whose traits stand in another order.
Inspection moved(const RuleSet& from, const Inspection& inspection, const RuleSet& to) {
  Inspection other = inspection;
  for (Observation& seen : other.observations) {
    seen.trait = *to.find_trait(from.traits[seen.trait].name);
  }
  std::sort(other.observations.begin(), other.observations.end(),
            [](const Observation& a, const Observation& b) {
              return std::pair(a.trait, a.side) < std::pair(b.trait, b.side);
            });
  return other;
}

// A finding without the places that names have in their lists.
std::string told(const RuleSet& rules, const Finding& found) {
  std::string words =
      fmt::format("status {} weight {} credit {} gain {} cap {} decisive {} open {} without {}",
                  static_cast<int>(found.status), found.weight, found.credit, found.gain,
                  found.cap ? static_cast<int>(*found.cap) : -1, found.decisive,
                  found.whether_it_applies_is_open, found.cannot_be_worked_out);
  for (const SideReading& reading : found.readings) {
    words += fmt::format("; {} {} {} {}", static_cast<int>(reading.side), reading.value,
                         reading.band, reading.credit);
  }
  std::vector<std::string> missing;
  for (const Missing& one : found.missing) {
    missing.push_back(
        fmt::format("{} {}", rules.traits[one.trait].name, static_cast<int>(one.side)));
  }
  std::sort(missing.begin(), missing.end());
  return fmt::format("{} missing {}", words, fmt::join(missing, ", "));
}

std::map<std::string, std::string> findings_by_name(const RuleSet& rules, const Verdict& verdict) {
  std::map<std::string, std::string> all;
  for (const Finding& found : verdict.findings) {
    const std::string name =
        fmt::format("{} {}", rules.rules[found.rule].name, static_cast<int>(found.side));
    all[name] = told(rules, found);
  }
  return all;
}

void require_same(const RuleSet& rules, const Verdict& verdict, const RuleSet& other_rules,
                  const Verdict& other) {
  REQUIRE((other.score == verdict.score));
  REQUIRE((other.sections == verdict.sections));
  REQUIRE(other.grade == verdict.grade);
  REQUIRE(other.uncapped == verdict.uncapped);
  REQUIRE(other.lowest_grade == verdict.lowest_grade);
  REQUIRE(other.highest_grade == verdict.highest_grade);
  REQUIRE(other.stands == verdict.stands);
  REQUIRE(findings_by_name(other_rules, other) == findings_by_name(rules, verdict));
}

TEST_CASE("the order of rules changes no finding, no bit of the score and no grade") {
  Dice dice(3);
  for (int i = 0; i < 1500; ++i) {
    const Program program = random_program(dice);
    const auto order = shuffled(program.rules.rules.size(), dice);
    const auto other = compile(with_rules_in(program.rules, order));
    REQUIRE(other);
    const Inspection inspection = random_inspection(program.rules, dice);
    INFO(outline(program.rules) << outline(program.rules, inspection));
    require_same(program.rules, grade(program, inspection), other->rules,
                 grade(*other, inspection));
  }
}

TEST_CASE("the order of traits changes no finding, no bit of the score and no grade") {
  Dice dice(4);
  for (int i = 0; i < 1500; ++i) {
    const Program program = random_program(dice);
    const auto order = shuffled(program.rules.traits.size(), dice);
    const auto other = compile(with_traits_in(program.rules, order));
    REQUIRE(other);
    const Inspection inspection = random_inspection(program.rules, dice);
    INFO(outline(program.rules) << outline(program.rules, inspection));
    require_same(program.rules, grade(program, inspection), other->rules,
                 grade(*other, moved(program.rules, inspection, other->rules)));
  }
}

}  // namespace
}  // namespace heelrule
