#include "engine/reading/read_marking_rules.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/doubt/doubted.hpp"

namespace heelrule {
namespace {

const std::string bench = house(
    "  length: {ask: Length, measure: mm}\n"
    "  heel: {ask: Heel, scale: [soft, medium, firm]}\n"
    "  socks: {ask: Socks, content: fibres}\n",
    rule("heel", "3", "levels: {soft: 0, medium: 60 %, firm: 100 %}"));

MarkingRules read(std::string text) {
  const RuleSet rules = graded(bench, "inspection: {rules: house}\nfound: {}\n").program.rules;
  Sources sources;
  const std::uint32_t source = sources.add("marks.yaml", std::move(text));
  auto marking = load_marking_rules(sources, source, rules);
  REQUIRE(marking);
  return *std::move(marking);
}

TEST_CASE("a marking file is read with all its parts, as YAML and as JSON") {
  const MarkingRules marking = read(
      "title: November\ntolerances: {length: 0.2 cm, heel: 1 level, socks: 3 %}\nlevel_off: 30 %\n"
      "weights: {heel: 2.5}\ncritical: {must: fair, safety: none}\n"
      "marks: {good: {from: 70, means: Well done.}, fair: {from: 40.5}, poor: {from: 0}}\n");
  CHECK(marking.title == "November");
  CHECK(marking.tolerances == std::vector<std::optional<double>>{2, 1, 0.03});
  CHECK(marking.weights == std::vector<std::optional<double>>{std::nullopt, 2.5, std::nullopt});
  CHECK(marking.level_off == 0.3);
  CHECK(marking.marks ==
        std::vector<MarkBoundary>{{"good", 70, "Well done."}, {"fair", 40.5, ""}, {"poor", 0, ""}});
  CHECK(marking.caps == CriticalCaps{1U, std::nullopt, 2U});
  CHECK(read("{\"marks\": {\"poor\": {\"from\": \"0\"}}}").marks.size() == 1);
}

TEST_CASE("what is left out is as usual") {
  const RuleSet rules = graded(bench, "inspection: {rules: house}\nfound: {}\n").program.rules;
  MarkingRules usual = usual_marking_rules(rules);
  usual.title = "Only a title";
  CHECK(read("title: Only a title\n") == usual);
}

}  // namespace
}  // namespace heelrule
