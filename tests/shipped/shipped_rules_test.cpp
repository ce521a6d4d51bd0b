// What holds of every rule set that ships.
#include <catch2/catch.hpp>
#include <set>

#include "engine/source/show_diagnostic.hpp"
#include "tests/shipped/shipped.hpp"

namespace heelrule {
namespace {

const std::vector<std::string> languages{"en"};

// Calls `check` with each rule set that ships, by its name.
template <class Check>
void for_each_rule_set(const Check& check) {
  for (const std::string& name : shipped_rule_sets()) {
    CAPTURE(name);
    check(shipped_program(name));
  }
}

TEST_CASE("every rule set that ships compiles without a warning") {
  REQUIRE(shipped_rule_sets().size() >= 10);
  for (const std::string& name : shipped_rule_sets()) {
    Sources sources;
    const auto program = compiled(name, sources);
    CAPTURE(name);
    CHECK(show(program.diagnostics(), sources).empty());
    CHECK(program);
  }
}

TEST_CASE("sixty rules or more ship") {
  std::set<std::string> names;
  for (const std::string& rule_set : shipped_rule_sets()) {
    for (const std::string& name : rules_in_file(rule_set)) {
      names.insert(name);
    }
  }
  CHECK(names.size() >= 60);
}

TEST_CASE("every rule that ships has a reason and a source") {
  for_each_rule_set([](const Program& program) {
    for (const Rule& rule : program.rules.rules) {
      CAPTURE(rule.name);
      CHECK(rule.because.in(languages).size() > 10);
      CHECK(rule.source.in(languages).size() > 10);
    }
  });
}

TEST_CASE("every rule that ships can earn full credit, and can lose some") {
  for_each_rule_set([](const Program& program) {
    for (std::size_t i = 0; i < program.rules.rules.size(); ++i) {
      double most = 0;
      double least = full_credit;
      for (const Credit& credit : program.rule_programs[i].scale.credits) {
        most = std::max({most, credit.from, credit.to});
        least = std::min({least, credit.from, credit.to});
      }
      CAPTURE(program.rules.rules[i].name);
      CHECK(most == full_credit);
      CHECK(least < full_credit);
    }
  });
}

TEST_CASE("every measure that is recorded says how to take it, what is plausible, and its doubt") {
  for_each_rule_set([](const Program& program) {
    for (const Trait& trait : program.rules.traits) {
      if (const auto* measure = std::get_if<MeasureKind>(&trait.kind)) {
        CAPTURE(trait.name);
        CHECK_FALSE(trait.how.empty());
        CHECK(measure->plausible);
        CHECK(measure->doubt);
      }
    }
  });
}

TEST_CASE("every rule set that ships asks the safety questions, and every yes refers") {
  for_each_rule_set([](const Program& program) {
    CHECK(program.rules.safety.size() >= 5);
    for (const SafetyQuestion& question : program.rules.safety) {
      CAPTURE(program.rules.traits[question.trait].name);
      CHECK_FALSE(question.referral.empty());
    }
    CHECK_FALSE(program.rules.cautions.empty());
  });
}

// A trait that no rule and no formula reads is a question for nothing.
TEST_CASE("every trait that is asked for is read by a rule") {
  for_each_rule_set([](const Program& program) {
    std::set<std::size_t> read;
    for (const SafetyQuestion& question : program.rules.safety) {
      read.insert(question.trait);
    }
    for (const RuleProgram& rule : program.rule_programs) {
      read.insert(rule.trait);
      for (const auto& needs : program.traits[rule.trait].needs) {
        for (const Register input : needs) {
          read.insert(program.inputs[input].input.trait);
        }
      }
      for (const Register input : rule.applies_needs) {
        read.insert(program.inputs[input].input.trait);
      }
    }
    for (std::size_t i = 0; i < program.rules.traits.size(); ++i) {
      const Trait& trait = program.rules.traits[i];
      CAPTURE(trait.name);
      CHECK((read.count(i) == 1 || std::holds_alternative<DerivedKind>(trait.kind)));
    }
  });
}

}  // namespace
}  // namespace heelrule
