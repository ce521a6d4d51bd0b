#include "engine/recording/bench_order.hpp"

#include <algorithm>
#include <catch2/catch.hpp>

#include "tests/shipped/shipped.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

// A rule set whose traits claim sections in all ways.
Program house() {
  return graded(R"(title: House
sections:
  look: {title: First look, order: 20}
  feet: {title: Feet, order: 10}
safety: {numb: {ask: "Numb?", referral: See somebody.}}
traits:
  gap: {ask: Gap, derive: insole - foot}
  insole: {ask: Insole, measure: mm, per: shoe}
  foot: {ask: Foot, section: feet, measure: mm, per: foot}
  worn: {ask: "Worn?", answer: yes or no}
  colour: {ask: Colour, choice: [red, blue]}
rules:
  gap: {section: look, weight: 1, reads: gap, applies: worn, because: It counts., source: house choice,
        bands: [{name: short, below: 5 mm, earns: 0}, {name: right, earns: 100 %}]}
grades: {sound: {from: 50, means: Keep it.}, unfit: {from: 0, means: Leave it.}}
)",
                "inspection: {rules: house}\n")
      .program;
}

std::vector<std::string> names(const Program& program) {
  std::vector<std::string> all;
  for (const BenchSection& section : bench_order(program)) {
    all.push_back("= " + std::string(short_name(section, program.rules)));
    for (const std::size_t trait : section.traits) {
      all.push_back(program.rules.traits[trait].name);
    }
  }
  return all;
}

std::vector<std::string> headings(const Program& program) {
  std::vector<std::string> all;
  for (const BenchSection& section : bench_order(program)) {
    all.emplace_back(heading(section, program.rules, {}));
  }
  return all;
}

}  // namespace

TEST_CASE("safety comes first, then sections by their order, then what no rule needs") {
  CHECK(names(house()) == std::vector<std::string>{"= safety", "numb", "= feet", "foot", "= look",
                                                   "insole", "worn", "= more", "colour"});
  CHECK(headings(house()) ==
        std::vector<std::string>{"Safety", "Feet", "First look", "More to record"});
}

TEST_CASE("a section without a question is left out") {
  const auto program =
      graded(one_rule("[{name: short, below: 5 mm, earns: 0}, {name: right, earns: 100 %}]"),
             one_record("1 mm", "1 mm"));
  CHECK(names(program.program) == std::vector<std::string>{"= fit", "gap"});
}

// Feet first and without load before with it, then the sock, the insole taken out, the shoe in the
// hand from the sole up, the shoe on the foot, and last what wear tells: common practice.
TEST_CASE("the shipped rule set for every day is asked in the order of the bench") {
  const auto program = shipped_program("everyday");
  CHECK(headings(program) == std::vector<std::string>{"Safety", "First questions", "Feet, seated",
                                                      "Feet, standing", "Socks",
                                                      "Insole out of the shoe", "Shoe in the hand",
                                                      "Shoe on the foot", "Signs of wear"});
  const auto all = names(program);
  const auto at = [&](const char* name) { return std::find(all.begin(), all.end(), name); };
  CHECK(at("heel_thickness") < at("heel_counter"));
  CHECK(at("heel_counter") < at("toe_box_height"));
  CHECK(at("removable_insole") < at("insole_length"));
}

TEST_CASE("every shipped rule set asks for each of its traits once, and none is left over") {
  for (const std::string& name : shipped_rule_sets()) {
    CAPTURE(name);
    const auto program = shipped_program(name);
    std::vector<std::size_t> asked;
    for (const BenchSection& section : bench_order(program)) {
      CHECK(section.kind != BenchSection::Kind::rest);
      asked.insert(asked.end(), section.traits.begin(), section.traits.end());
    }
    std::sort(asked.begin(), asked.end());
    std::vector<std::size_t> recorded;
    for (std::size_t i = 0; i < program.rules.traits.size(); ++i) {
      if (!std::holds_alternative<DerivedKind>(program.rules.traits[i].kind)) {
        recorded.push_back(i);
      }
    }
    CHECK(asked == recorded);
  }
}

TEST_CASE("a trait keeps its section where it is built on") {
  const auto program = shipped_program("child");
  const auto trait = program.rules.find_trait("foot_length");
  REQUIRE(trait);
  CHECK(program.rules.traits[*trait].section->value == "feet_standing");
}

}  // namespace heelrule
