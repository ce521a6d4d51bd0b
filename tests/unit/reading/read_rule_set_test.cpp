// What a sound rule file comes to; its faults are in tests/diagnostics.
#include "engine/reading/read_rule_set.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/yaml_tree.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

RuleSet read(const std::string& text) {
  Sources sources;
  Diagnostics diagnostics;
  const auto tree = read_yaml(sources, sources.add("r", text), diagnostics);
  RuleSet rules = tree ? read_rule_set("r", *tree, diagnostics) : RuleSet{};
  CHECK(show(diagnostics, sources).empty());
  return rules;
}

const RuleSet& bench_check() {
  static const RuleSet rules = read(R"(title: {en: Bench check, es: Revisión}
edition: 2026-11
languages: [en, es]
sections:
  build: {title: How the shoe is built, order: 2}
  wear: {title: How it has worn}
  fit: {title: Fit on the standing foot, order: 1.5}
safety:
  numb_feet: {ask: Are the feet numb, per: foot, referral: See a practitioner.}
  fever: {ask: Is there a fever, referral: See a practitioner.}
traits:
  foot_length:
    ask: Length of the standing foot
    how: Read at the longest toe.
    measure: mm
    per: foot
    plausible: 8 cm .. 340 mm
    doubt: 0.1 cm
  heel_counter: {ask: How firm, scale: [soft, very firm], per: shoe}
  fastening: {ask: What, choice: {laces: "Round, flat", hook and loop: {en: Tape, es: Cinta}}}
  fibres: {ask: Of what, content: fibres}
  size: {ask: Marked, marked: shoe size}
  sock: {ask: Marked, marked: sock range}
  lining: {ask: Is it lined, answer: yes or no, per: client}
  allowance: {ask: How much, derive: foot_length / 10, shown: cm}
rules:
  foot_length:
    title: Foot length
    section: fit
    weight: 2.5
    must: {caps: unfit}
    reads: foot_length
    sides: each
    applies: lining
    bands:
      - {name: short, below: 20 cm, earns: 0, say: too short}
      - {name: close, up to: 243 mm, earns: 20 % .. 100 %}
      - {name: right, earns: 100 %, advice: Keep it.}
    because: It counts.
    source: common practice
    caution: Measure again.
    despite_referral: yes
  lining:
    section: build
    weight: 0
    reads: lining
    levels: {yes: 33.333333 %, no: {earns: 0, say: not lined}}
    because: It counts.
    source: house choice
grades:
  sound: {from: 79.995, means: Keep.}
  unfit: {from: 0, means: Leave.}
cautions:
  no_diagnosis: This is no diagnosis.
)");
  return rules;
}

TEST_CASE("a rule set's own keys are read") {
  const RuleSet& rules = bench_check();
  const std::vector<std::string> spanish{"es"};
  CHECK(rules.title.in(spanish) == "Revisión");
  CHECK(rules.edition == "2026-11");
  CHECK(rules.languages == std::vector<std::string>{"en", "es"});
  CHECK(rules.cautions[0].name == "no_diagnosis");
}

TEST_CASE("sections are ordered by their numbers, and else as written") {
  const RuleSet& rules = bench_check();
  REQUIRE(rules.sections.size() == 3);
  CHECK(rules.sections[0].name.value == "wear");
  CHECK(rules.sections[1].name.value == "fit");
  CHECK(rules.sections[2].name.value == "build");
}

TEST_CASE("safety questions are the first traits") {
  const RuleSet& rules = bench_check();
  REQUIRE(rules.safety.size() == 2);
  CHECK(rules.find_trait("numb_feet") == 0U);
  CHECK(rules.traits[0].per == Per::foot);
  CHECK(rules.traits[1].per == Per::client);
  CHECK(rules.safety[1].referral.in({}) == "See a practitioner.");
}

TEST_CASE("a measure keeps its unit, its range and its doubt in the stored unit") {
  const Trait& trait = bench_check().traits[2];
  const auto& measure = std::get<MeasureKind>(trait.kind);
  CHECK(trait.per == Per::foot);
  CHECK(trait.how.in({}) == "Read at the longest toe.");
  CHECK(measure.unit == Unit::millimetre);
  CHECK(measure.plausible->value.from.stored == 80);
  CHECK(measure.plausible->value.to.stored == 340);
  CHECK(measure.doubt->value.stored == 1);
}

TEST_CASE("scales and choices keep the order of their levels, and what each means") {
  const RuleSet& rules = bench_check();
  const auto& scale = levels_of(rules.traits[3].kind);
  REQUIRE(scale.size() == 2);
  CHECK(scale[1].name.value == "very firm");
  const auto& choice = levels_of(rules.traits[4].kind);
  const std::vector<std::string> spanish{"es"};
  CHECK(choice[0].meaning.in({}) == "Round, flat");
  CHECK(choice[1].meaning.in(spanish) == "Cinta");
}

TEST_CASE("each kind of trait is told by its key") {
  const RuleSet& rules = bench_check();
  CHECK(std::holds_alternative<FibresKind>(rules.traits[5].kind));
  CHECK(std::holds_alternative<ShoeSizeKind>(rules.traits[6].kind));
  CHECK(std::holds_alternative<SockRangeKind>(rules.traits[7].kind));
  CHECK(std::holds_alternative<AnswerKind>(rules.traits[8].kind));
  const auto& derived = std::get<DerivedKind>(rules.traits[9].kind);
  CHECK(derived.formula.value == "foot_length / 10");
  CHECK(derived.shown->value == Unit::centimetre);
}

TEST_CASE("weights are thousandths, boundaries thousandths of a point, credits millionths") {
  const RuleSet& rules = bench_check();
  CHECK(rules.rules[0].weight.value == 2'500);
  CHECK(rules.grades[0].from.value == 79'995);
  CHECK(rules.rules[0].bands[1].earns.value == Credit{200'000, 1'000'000});
  CHECK(rules.rules[1].levels[0].earns.value == Credit{333'333, 333'333});
}

TEST_CASE("a cut point belongs to the band below it where it says `up to`") {
  const Rule& rule = bench_check().rules[0];
  CHECK(rule.bands[0].cut->at.stored == 200);
  CHECK_FALSE(rule.bands[0].cut->belongs_below);
  CHECK(rule.bands[1].cut->belongs_below);
  CHECK_FALSE(rule.bands[2].cut);
}

TEST_CASE("a rule keeps everything that is said of it") {
  const Rule& rule = bench_check().rules[0];
  CHECK(rule.title.in({}) == "Foot length");
  CHECK(rule.caps->value == "unfit");
  CHECK(rule.sides == SideRule::each);
  CHECK(rule.applies->value == "lining");
  CHECK(rule.despite_referral);
  CHECK(rule.words.caution.in({}) == "Measure again.");
  CHECK(rule.bands[0].words.say.in({}) == "too short");
  CHECK(rule.bands[2].words.advice.in({}) == "Keep it.");
  CHECK(bench_check().rules[1].levels[1].words.say.in({}) == "not lined");
}

}  // namespace
}  // namespace heelrule
