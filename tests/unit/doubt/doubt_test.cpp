#include "engine/doubt/doubt.hpp"

#include <fmt/format.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <map>

#include "engine/doubt/conformity.hpp"
#include "engine/quantity/deviate.hpp"
#include "engine/quantity/random_stream.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/unit/doubt/doubted.hpp"

namespace heelrule {
namespace {

// A chance p from 10,000 draws lies within four standard errors of a share.
Approx by_draws(double chance) {
  return Approx(chance).margin(4 * std::sqrt(chance * (1 - chance) / 10'000) + 1e-12);
}

const std::string window =
    "bands: [{name: short, below: 10 mm, earns: 0}, {name: right, up to: 15 mm, earns: 100 %}, "
    "{name: long, earns: 50 %}]";

std::string one_gap(const std::string& trait, const std::string& more_of_rule = "",
                    const std::string& more = "") {
  return house("  gap: " + trait + "\n", rule("gap", "1", window, more_of_rule), more);
}

// The window cases of tests/published/jcgm106_test.cpp, through the whole engine.
TEST_CASE("a finding of one reading has the chances of JCGM 106") {
  const Doubted sample = doubted(one_gap("{ask: Gap, measure: mm, doubt: 2 mm}"), "{gap: 12 mm}");
  const FindingDoubt& found = sample.doubt.findings[0];
  CHECK(found.sides[0].uncertainty == 2);
  CHECK(found.sides[0].bands[1] == Approx(0.774538).epsilon(1e-6));
  CHECK(found.chances.pass == Approx(0.774538).epsilon(1e-6));
  CHECK(found.chances.fail == Approx(0.158655).epsilon(1e-5));
  CHECK(found.chances.part == Approx(0.066807).epsilon(1e-5));
  CHECK(found.sure == found.chances.pass);
  CHECK(found.in_doubt);
  CHECK_FALSE(found.is_clear);
}

TEST_CASE("what is clear is for the rule set to say, and 95 % where it is silent") {
  const std::string trait = "{ask: Gap, measure: mm, doubt: 1 mm}";
  const auto is_clear = [&](const std::string& more) {
    return doubted(one_gap(trait, "", more), "{gap: 12 mm}").doubt.findings[0].is_clear;
  };  // 0.9759
  CHECK(is_clear(""));
  CHECK(is_clear("decision: {clear_from: 97 %}\n"));
  CHECK_FALSE(is_clear("decision: {clear_from: 98 %}\n"));
}

TEST_CASE("only rules that protect are guarded, and only by a rule set that says so") {
  const std::string trait = "{ask: Gap, measure: mm, doubt: 1 mm}";
  const auto guarded = [&](const std::string& rule, const std::string& set) {
    return doubted(one_gap(trait, rule, set), "{gap: 10.9 mm}").doubt.findings[0].sides[0].guarded;
  };
  CHECK_FALSE(guarded("", "decision: {guard: 1}\n"));
  CHECK_FALSE(guarded(", protects: yes", ""));
  CHECK_FALSE(guarded(", protects: yes", "decision: {guard: 0.8}\n"));
  CHECK(guarded(", protects: yes", "decision: {guard: 1}\n") == 0U);
}

// The worse of two independent sides passes if both do: 0.9759² and so on.
TEST_CASE("two sides that were read apart are independent") {
  const Doubted sample = doubted(one_gap("{ask: Gap, measure: mm, per: shoe, doubt: 1 mm}"),
                                 "{gap: {left: 12 mm, right: 11 mm}}");
  const FindingDoubt& found = sample.doubt.findings[0];
  CHECK(found.chances.pass == by_draws(0.975900 * 0.841313));
  CHECK(found.sides[0].bands[1] == Approx(0.975900).epsilon(1e-6));
  CHECK(found.sides[1].bands[1] == Approx(0.841313).epsilon(1e-6));
}

TEST_CASE("one value for both sides is wrong on both or on neither") {
  const Doubted sample =
      doubted(one_gap("{ask: Gap, measure: mm, per: shoe, doubt: 1 mm}"), "{gap: 11 mm}");
  CHECK(sample.doubt.findings[0].chances.pass == by_draws(0.841313));
}

// Insole less foot, 1 mm each: √2 mm. Φ(3/√2) − Φ(−2/√2) = 0.983053 − 0.078650.
TEST_CASE("a difference has the doubt of both its readings") {
  const Doubted sample = doubted(house("  insole: {ask: I, measure: mm, doubt: 1 mm}\n  foot: "
                                       "{ask: F, measure: mm, doubt: 1 mm}\n"
                                       "  gap: {ask: G, derive: insole - foot}\n",
                                       rule("gap", "1", window)),
                                 "{insole: 257 mm, foot: 245 mm}");
  CHECK(sample.doubt.findings[0].sides[0].uncertainty == Approx(std::sqrt(2)));
  CHECK(sample.doubt.findings[0].chances.pass == Approx(0.904403).epsilon(1e-5));
}

// One insole, two rules: with 10.4 mm both gaps pass or one of them at least fails. Were the insole
// drawn twice, both would pass by 0.655² = 0.43; as it is, by 0.655.
TEST_CASE("a reading that two rules share is shared") {
  const std::string gaps = house(
      "  insole: {ask: I, measure: mm, doubt: 1 mm}\n"
      "  first: {ask: G, derive: insole - 245 mm}\n  second: {ask: G, derive: insole - 245 mm}\n",
      rule("first", "1", window) + rule("second", "1", window));
  const Doubted sample = doubted(gaps, "{insole: 255.4 mm}");
  CHECK(sample.doubt.grades[0].chance == by_draws(0.655422));
  CHECK(sample.doubt.grades[2].chance == by_draws(1 - 0.655422));
}

TEST_CASE("a level that is often mistaken for its neighbours may be one of them") {
  const std::string counter =
      house("  counter: {ask: C, scale: [soft, medium, firm], confusion: 30 %}\n",
            rule("counter", "1", "levels: {soft: 0, medium: 50 %, firm: 100 %}"));
  const Doubted medium = doubted(counter, "{counter: medium}");
  CHECK(medium.doubt.findings[0].sides[0].bands == std::vector<double>{0.15, 0.7, 0.15});
  CHECK(medium.doubt.findings[0].chances.part == by_draws(0.7));
  CHECK(medium.doubt.grades[0].chance == by_draws(0.15));
  const Doubted firm = doubted(counter, "{counter: firm}");
  CHECK(firm.doubt.findings[0].sides[0].bands == std::vector<double>{0, 0.15, 0.85});
  CHECK(firm.doubt.grades[0].chance == by_draws(0.85));
}

// Not linear, and known all the same: the larger of two equal and independent lengths lies below
// the limit if both do.
TEST_CASE("what no closed form is known for is drawn") {
  const Doubted sample = doubted(
      house("  a: {ask: A, measure: mm, doubt: 1 mm}\n  b: {ask: B, measure: mm, doubt: 1 mm}\n"
            "  most: {ask: M, derive: \"max(a, b)\"}\n",
            rule("most", "1", window)),
      "{a: 9 mm, b: 9 mm}");
  CHECK(sample.doubt.findings[0].chances.fail == by_draws(0.841345 * 0.841345));
  // The standard deviation of the larger of two is √(1 − 1/π).
  CHECK(sample.doubt.findings[0].sides[0].uncertainty == Approx(0.825646).margin(0.025));
}

TEST_CASE("whether a rule applies may be in doubt too") {
  const Doubted sample = doubted(
      house("  gap: {ask: G, measure: mm}\n  age: {ask: A, measure: years, doubt: 1 years}\n",
            rule("gap", "1", window, ", applies: age < 15 years") +
                rule("age", "0", "bands: [{name: all, earns: 100 %}]")),
      "{gap: 9 mm, age: 14 years}");
  CHECK(sample.doubt.findings[0].chances.fail == by_draws(0.841345));
  CHECK(sample.doubt.findings[0].chances.open == by_draws(0.158655));
  CHECK(sample.doubt.findings[0].sure == sample.doubt.findings[0].chances.fail);
}

// Independent readings, so the grades can be worked out: every combination of bands with the
// product of its chances.
TEST_CASE("the chances of the grades are those of an exact convolution") {
  const std::vector<double> weights{5, 3, 4, 2, 6};
  const std::vector<double> values{9.2, 14.1, 11.0, 15.6, 10.3};
  std::string traits;
  std::string rules;
  std::string found = "{";
  for (std::size_t i = 0; i < weights.size(); ++i) {
    const std::string name = "gap" + std::to_string(i);
    traits += "  " + name + ": {ask: Gap, measure: mm, doubt: 1.5 mm}\n";
    rules += rule(name, std::to_string(static_cast<int>(weights[i])), window);
    found += fmt::format("{}{}: {} mm", i > 0 ? ", " : "", name, values[i]);
  }
  const Doubted sample = doubted(house(traits, rules), found + "}");
  std::map<double, double> scores{{0.0, 1.0}};
  for (std::size_t i = 0; i < weights.size(); ++i) {
    const std::vector<double> chances{chance_below(values[i], 1.5, 10),
                                      chance_within(values[i], 1.5, 10, 15),
                                      1 - chance_below(values[i], 1.5, 15)};
    std::map<double, double> next;
    for (const auto& [score, chance] : scores) {
      next[score] += chance * chances[0];
      next[score + weights[i]] += chance * chances[1];
      next[score + weights[i] / 2] += chance * chances[2];
    }
    scores = next;
  }
  std::vector<double> grades(3, 0.0);
  for (const auto& [score, chance] : scores) {
    grades[score >= 16 ? 0 : score >= 10 ? 1 : 2] += chance;
  }
  for (std::size_t i = 0; i < grades.size(); ++i) {
    CHECK(grades[i] > 0.05);  // else it would show nothing
    CHECK(sample.doubt.grades[i].chance == by_draws(grades[i]));
    CHECK(sample.doubt.grades[i].surely == sample.doubt.grades[i].chance);
    CHECK(sample.doubt.grades[i].possibly == sample.doubt.grades[i].chance);
  }
}

// Weights 1 and 1; the second was not seen. By the first alone the grade is sound or unfit; with
// the second it is sound, usable or unfit.
TEST_CASE("what was not seen counts by its reach, and not by a guess") {
  const Doubted sample = doubted(
      house("  gap: {ask: G, measure: mm, doubt: 1 mm}\n  other: {ask: O, answer: yes or no}\n",
            rule("gap", "1",
                 "bands: [{name: short, below: 10 mm, earns: 0}, "
                 "{name: right, up to: 900 mm, earns: 100 %}, {name: far, earns: 50 %}]") +
                rule("other", "1", "levels: {yes: 100 %, no: 0}")),
      "{gap: 11 mm}");
  const auto& grades = sample.doubt.grades;
  CHECK(grades[0].chance == by_draws(0.841345));
  CHECK(grades[1].chance == 0);
  CHECK(grades[2].chance == by_draws(0.158655));
  CHECK(grades[0].surely == 0);
  CHECK(grades[0].possibly == by_draws(0.841345));
  CHECK(grades[1].surely == 0);
  CHECK(grades[1].possibly == 1);  // 50 at best without the gap, 50 at worst with it
  CHECK(grades[2].possibly == by_draws(0.158655));
}

// What "a chance of 80 %" is for: of all such findings, four of five are true. 40,000 gaps between
// 0 and 25 mm, each read with 1.5 mm of doubt; nothing was known of them before.
TEST_CASE("of what is said with a chance, so large a share is true") {
  std::map<int, std::pair<int, int>> said;  // by tenths: how often, and how often it was true
  for (std::uint32_t i = 0; i < 40'000; ++i) {
    const RandomWords words = random_words({i, 0, 0, 0}, {3, 3});
    const double truth = -10 + 45 * open_fraction(words[0]);
    const double reading = truth + 1.5 * normal_deviate(open_fraction(words[1]));
    const double chance = chance_within(reading, 1.5, 10, 15);
    auto& [often, was_true] = said[static_cast<int>(chance * 10)];
    ++often;
    was_true += truth >= 10 && truth < 15 ? 1 : 0;
  }
  for (int tenth = 1; tenth < 9; ++tenth) {
    const auto [often, was_true] = said[tenth];
    CAPTURE(tenth, often);
    REQUIRE(often > 200);
    CHECK(static_cast<double>(was_true) / often == Approx(tenth / 10.0 + 0.05).margin(0.08));
  }
}

// The whole way: two gaps as they truly are, read with 1.5 mm of doubt, graded, and the grade that
// is stated held against that of the truth. Nothing was known of the gaps before but that they lie
// anywhere in 17 mm.
TEST_CASE("of the grades that are stated with a chance, so many are true") {
  Doubted sample = doubted(house("  a: {ask: A, measure: mm, doubt: 1.5 mm}\n"
                                 "  b: {ask: B, measure: mm, doubt: 1.5 mm}\n",
                                 rule("a", "3", window) + rule("b", "2", window)),
                           "{a: 12 mm, b: 12 mm}");
  const auto with = [&](double a, double b) {
    std::get<Readings>(sample.inspection.observations[0].value).stored = {a};
    std::get<Readings>(sample.inspection.observations[1].value).stored = {b};
    return grade(sample.program, sample.inspection);
  };
  double expected = 0;
  double variance = 0;
  int are_true = 0;
  int clear = 0;
  int clear_and_true = 0;
  for (std::uint32_t i = 0; i < 200; ++i) {
    const RandomWords words = random_words({i, 1, 0, 0}, {11, 11});
    const double a = 4 + 17 * open_fraction(words[0]);
    const double b = 4 + 17 * open_fraction(words[1]);
    const Verdict truth = with(a, b);
    const Verdict read = with(a + 1.5 * normal_deviate(open_fraction(words[2])),
                              b + 1.5 * normal_deviate(open_fraction(words[3])));
    const Doubt doubt = doubt_of(sample.program, sample.inspection, read);
    const double chance = doubt.grades[*read.grade].chance;
    expected += chance;
    variance += chance * (1 - chance);
    are_true += read.grade == truth.grade ? 1 : 0;
    for (std::size_t f = 0; f < 2; ++f) {
      if (doubt.findings[f].is_clear) {
        ++clear;
        clear_and_true += read.findings[f].status == truth.findings[f].status ? 1 : 0;
      }
    }
  }
  CHECK(variance > 10);  // else it would show nothing
  CHECK(are_true == Approx(expected).margin(3 * std::sqrt(variance)));
  CHECK(clear > 100);
  CHECK(clear_and_true >= 0.95 * clear);
}

}  // namespace
}  // namespace heelrule
