#include "tests/shipped/shipped.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "engine/reading/load_rules.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/yaml_tree.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

namespace fs = std::filesystem;

std::string path_of(std::string_view rule_set) {
  return fmt::format("{}/{}.yaml", HEELRULE_TEST_RULES, rule_set);
}

}  // namespace

std::vector<std::string> shipped_rule_sets() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(HEELRULE_TEST_RULES)) {
    if (entry.path().extension() == ".yaml") {
      names.push_back(entry.path().stem().string());
    }
  }
  std::sort(names.begin(), names.end());
  return names;
}

std::string content_of(const std::string& path) {
  CAPTURE(path);
  std::ifstream file(path, std::ios::binary);
  REQUIRE(file);
  return {std::istreambuf_iterator<char>(file), {}};
}

Checked<Program> compiled(const std::string& rule_set, Sources& sources) {
  const auto find = [](std::string_view name, std::string_view) -> Parsed<FoundFile> {
    return FoundFile{std::string(name) + ".yaml", std::string(name), content_of(path_of(name))};
  };
  LoadedRules loaded = load_rules(rule_set, find, sources);
  return compile(std::move(loaded.rules), std::move(loaded.diagnostics));
}

Program shipped_program(const std::string& rule_set) {
  Sources sources;
  auto program = compiled(rule_set, sources);
  INFO(show(program.diagnostics(), sources));
  REQUIRE(program);
  return *std::move(program);
}

std::vector<std::string> rules_in_file(const std::string& rule_set) {
  Sources sources;
  Diagnostics diagnostics;
  const auto tree =
      read_yaml(sources, sources.add(rule_set, content_of(path_of(rule_set))), diagnostics);
  REQUIRE(tree);
  std::vector<std::string> names;
  if (const Node* rules = tree->find("rules")) {
    for (const Entry& entry : rules->entries) {
      names.push_back(entry.key.value);
    }
  }
  return names;
}

Inspection record_for(const Program& program, const std::string& name, const std::string& text) {
  Sources sources;
  const auto inspection = load_inspection(sources, sources.add(name, text), program.rules);
  INFO(show(inspection.diagnostics(), sources));
  REQUIRE(inspection);
  return *inspection;
}

const Finding& finding_of(const Program& program, const Verdict& verdict, const std::string& rule) {
  CAPTURE(rule);
  const auto found = std::find_if(
      verdict.findings.begin(), verdict.findings.end(),
      [&](const Finding& finding) { return program.rules.rules[finding.rule].name == rule; });
  REQUIRE(found != verdict.findings.end());
  return *found;
}

}  // namespace heelrule
