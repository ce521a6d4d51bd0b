#include "tests/unit/report/graded.hpp"

#include <catch2/catch.hpp>
#include <utility>

#include "engine/reading/load_rules.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/scoring/grade.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {

Graded graded(const std::string& rules, const std::string& record) {
  Sources sources;
  const auto find = [&](std::string_view, std::string_view) -> Parsed<FoundFile> {
    return FoundFile{"house.yaml", "house.yaml", rules};
  };
  LoadedRules loaded = load_rules("house", find, sources);
  auto program = compile(std::move(loaded.rules), std::move(loaded.diagnostics));
  INFO(show(program.diagnostics(), sources));
  REQUIRE(program);
  const auto inspection =
      load_inspection(sources, sources.add("record.yaml", record), program->rules);
  INFO(show(inspection.diagnostics(), sources));
  REQUIRE(inspection);
  Verdict verdict = grade(*program, *inspection);
  return {*program, *inspection, std::move(verdict)};
}

std::string one_rule(const std::string& bands, const std::string& more) {
  return "title: House\n"
         "sections: {fit: {title: Fit}}\n"
         "traits: {gap: {ask: Gap before the toe, measure: mm, per: shoe}}\n"
         "rules:\n"
         "  space:\n"
         "    section: fit\n"
         "    weight: 4\n"
         "    reads: gap\n"
         "    because: Toes need room.\n"
         "    source: common practice\n"
         "    bands: " +
         bands + "\n" + more +
         "grades: {sound: {from: 50, means: Keep it.}, unfit: {from: 0, means: Leave it.}}\n";
}

std::string one_record(const std::string& left, const std::string& right) {
  return "inspection: {rules: house}\nfound: {gap: {left: " + left + ", right: " + right + "}}\n";
}

}  // namespace heelrule
