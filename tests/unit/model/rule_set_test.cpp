#include "engine/model/rule_set.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

RuleSet sample() {
  RuleSet rules;
  rules.sections.resize(2);
  rules.sections[1].name.value = "fit";
  rules.traits.resize(3);
  rules.traits[2].name = "foot_length";
  rules.grades.resize(2);
  rules.grades[0].name.value = "sound";
  return rules;
}

TEST_CASE("traits, sections and grades are found by their names") {
  const RuleSet rules = sample();
  CHECK(rules.find_trait("foot_length") == 2);
  CHECK(rules.find_section("fit") == 1);
  CHECK(rules.find_grade("sound") == 0);
}

TEST_CASE("a name that is not there is not found, nor is half of one") {
  const RuleSet rules = sample();
  CHECK_FALSE(rules.find_trait("foot"));
  CHECK_FALSE(rules.find_trait("foot_length_standing"));
  CHECK_FALSE(rules.find_section("Fit"));
  CHECK_FALSE(RuleSet{}.find_grade("sound"));
}

TEST_CASE("a name in words has blanks for underscores") {
  CHECK(in_words("heel_pitch") == "heel pitch");
  CHECK(in_words("tread") == "tread");
}

}  // namespace
}  // namespace heelrule
