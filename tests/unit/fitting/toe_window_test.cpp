#include "engine/fitting/toe_window.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

// A rule of this name with bands that end at these cuts; one credit more than cuts.
RuleSet rules_with(std::string name, const std::vector<double>& cuts,
                   const std::vector<Credit>& credits, Unit unit = Unit::millimetre) {
  RuleSet rules;
  rules.name = "house";
  Rule rule;
  rule.name = std::move(name);
  for (std::size_t i = 0; i < credits.size(); ++i) {
    Band band;
    band.earns.value = credits[i];
    if (i < cuts.size()) {
      band.cut = Cut{{cuts[i], unit}, false, {}};
    }
    rule.bands.push_back(band);
  }
  rules.rules.push_back(rule);
  return rules;
}

constexpr Credit none{0, 0};
constexpr Credit half{500'000, 500'000};
constexpr Credit all{full_credit, full_credit};
constexpr Credit falling{full_credit, 0};

TEST_CASE("the window is where the rule earns full credit throughout") {
  const auto window =
      toe_window(rules_with("toe_allowance", {6, 10, 15, 20}, {none, half, all, falling, none}));
  REQUIRE(window);
  CHECK(window->used_up == Millimetres(6));
  CHECK(window->least == Millimetres(10));
  CHECK(window->most == Millimetres(15));
}

TEST_CASE("full bands beside each other are one window") {
  const auto window = toe_window(rules_with("toe_allowance", {10, 12, 18}, {none, all, all, half}));
  REQUIRE(window);
  CHECK(window->used_up == Millimetres(10));
  CHECK(window->least == Millimetres(10));
  CHECK(window->most == Millimetres(18));
}

TEST_CASE("without a band that earns nothing no space is too little") {
  const auto window = toe_window(rules_with("toe_allowance", {8, 12}, {half, all, half}));
  REQUIRE(window);
  CHECK(window->used_up == Millimetres(0));
}

TEST_CASE("a rule set without that rule has no window") {
  const auto window = toe_window(rules_with("heel_hold", {8, 12}, {half, all, half}));
  CHECK(
      window.problem() ==
      Problem{"`house` has no rule `toe_allowance` with bands of length, which says how much space "
              "the toes need",
              "use a rule set that builds on `fit`"});
  CHECK_FALSE(toe_window(RuleSet{}));
  CHECK_FALSE(toe_window(rules_with("toe_allowance", {8, 12}, {half, all, half}, Unit::degree)));
}

TEST_CASE("full credit nowhere, or without an end, is no window") {
  const Problem wanted{
      "the rule `toe_allowance` of `house` does not say between which lengths it earns full credit",
      "give it a band that earns 100 % and ends at a length"};
  CHECK(toe_window(rules_with("toe_allowance", {8}, {none, half})).problem() == wanted);
  CHECK(toe_window(rules_with("toe_allowance", {8}, {none, all})).problem() == wanted);
}

}  // namespace
}  // namespace heelrule
