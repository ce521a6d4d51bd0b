#include "tests/unit/page/loaded.hpp"

#include <catch2/catch.hpp>
#include <utility>

#include "engine/page/page_rules.hpp"
#include "engine/reading/load_rules.hpp"
#include "engine/reading/yaml_tree.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/source/show_diagnostic.hpp"
#include "tests/shipped/shipped.hpp"

namespace heelrule {
namespace {

LoadedProgram loaded(const std::string& name, const FindFile& find) {
  Sources sources;
  LoadedRules rules = load_rules(name, find, sources);
  Node tree = rules.tree;
  auto program = compile(std::move(rules.rules), std::move(rules.diagnostics));
  INFO(show(program.diagnostics(), sources));
  REQUIRE(program);
  return {std::move(tree), *std::move(program)};
}

}  // namespace

LoadedProgram loaded_program(const std::string& rules) {
  return loaded("house", [&](std::string_view, std::string_view) -> Parsed<FoundFile> {
    return FoundFile{"house.yaml", "house.yaml", rules};
  });
}

LoadedProgram loaded_shipped(const std::string& name) {
  return loaded(name, [](std::string_view wanted, std::string_view) -> Parsed<FoundFile> {
    const std::string file = std::string(HEELRULE_TEST_RULES) + "/" + std::string(wanted) + ".yaml";
    return FoundFile{std::string(wanted), file, content_of(file)};
  });
}

PageEngine page_engine(const LoadedProgram& loaded) {
  auto engine = PageEngine::open(page_rules(loaded.program.rules.name, loaded.tree));
  INFO(engine.problem().message);
  REQUIRE(engine);
  return *engine;
}

Node tree_of(const std::string& yaml) {
  Sources sources;
  Diagnostics diagnostics;
  const auto source = sources.add("record.yaml", yaml);
  auto tree = read_yaml(sources, source, diagnostics);
  INFO(show(diagnostics, sources));
  REQUIRE(tree);
  return *std::move(tree);
}

std::string small_rules() {
  return R"yaml(title: {en: House, es: Casa}
edition: 2026-11
languages: [en, es]
sections:
  fit: {title: {en: Fit, es: Ajuste}}
safety:
  numb: {ask: "Are the feet numb?", referral: See a practitioner.}
traits:
  foot_length: {ask: {en: Length of the foot, es: Longitud del pie}, how: Standing., measure: mm, per: foot, plausible: 80 mm .. 340 mm}
  insole_length: {ask: Length of the insole, measure: mm, per: shoe}
  heel_counter: {ask: Press the counter, scale: {soft: it gives way, firm: it holds}, per: shoe}
  fibres: {ask: "What is the sock made of?", content: fibres}
  space: {ask: Space before the toes, derive: insole_length - foot_length}
rules:
  space:
    section: fit
    weight: 2
    reads: space
    bands: [{name: short, below: 6 mm, earns: 0}, {name: right, earns: 100 %}]
    because: Toes need room.
    source: common practice
  counter:
    section: fit
    weight: 1
    reads: heel_counter
    levels: {soft: 0, firm: 100 %}
    because: It holds the heel.
    source: common practice
grades: {sound: {from: 50, means: Keep it.}, unfit: {from: 0, means: Leave it.}}
)yaml";
}

}  // namespace heelrule
