#include "engine/recording/record_yaml.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/yaml_tree.hpp"
#include "engine/recording/draft.hpp"
#include "tests/shipped/shipped.hpp"

namespace heelrule {
namespace {

Node tree_of(const std::string& text) {
  Sources sources;
  Diagnostics diagnostics;
  const auto tree = read_yaml(sources, sources.add("r", text), diagnostics);
  REQUIRE(tree);
  return *tree;
}

}  // namespace

TEST_CASE("a record is written with every text in quotes") {
  CHECK(record_yaml(tree_of("inspection: {rules: everyday, date: 2026-10-03}\n"
                            "safety: {numb_feet: no}\n"
                            "found:\n"
                            "  foot_length: {left: 243 mm, right: [246, 247 mm]}\n"
                            "  sock_fibres: {polyamide filament: 20 %, cotton: 80 %}\n"
                            "  heel_counter: {value: firm, note: \"a: b # c\"}\n"
                            "amended: [{answer: numb_feet, was: yes}]\n")) ==
        "inspection:\n"
        "  rules: \"everyday\"\n"
        "  date: \"2026-10-03\"\n"
        "\n"
        "safety:\n"
        "  numb_feet: \"no\"\n"
        "\n"
        "found:\n"
        "  foot_length: {left: \"243 mm\", right: [\"246\", \"247 mm\"]}\n"
        "  sock_fibres: {\"polyamide filament\": \"20 %\", cotton: \"80 %\"}\n"
        "  heel_counter: {value: \"firm\", note: \"a: b # c\"}\n"
        "\n"
        "amended:\n"
        "  - {answer: \"numb_feet\", was: \"yes\"}\n");
}

TEST_CASE("every example record means the same after it was taken over and written again") {
  for (const auto& [rules, folder] :
       {std::pair("everyday", "office-worker"), std::pair("child", "child"),
        std::pair("older-adult", "older-adult")}) {
    CAPTURE(folder);
    const auto program = shipped_program(rules);
    const std::string text =
        content_of(std::string(HEELRULE_TEST_EXAMPLES) + "/" + folder + "/inspection.yaml");
    Draft draft(program);
    draft.take_over(tree_of(text));
    CHECK_FALSE(draft.is_changed());
    const std::string written = record_yaml(draft.record(std::nullopt));
    Inspection before = record_for(program, "before.yaml", text);
    Inspection after = record_for(program, "after.yaml", written);
    for (Inspection* one : {&before, &after}) {
      for (Observation& observation : one->observations) {
        observation.where = {};
      }
    }
    CHECK(before == after);
    CHECK(same_content(tree_of(written), draft.record(std::nullopt)));
  }
}

}  // namespace heelrule
