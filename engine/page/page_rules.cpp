#include "engine/page/page_rules.hpp"

#include <utility>

#include "engine/page/tree_json.hpp"
#include "engine/reading/json_tree.hpp"
#include "engine/reading/read_rule_set.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/scoring/compile.hpp"

namespace heelrule {

std::string page_rules(std::string_view name, const Node& tree) {
  JsonWriter json(JsonWriter::Layout::compact);
  json.begin_object().text("name", name).key("rules");
  write_tree(json, tree);
  json.end_object();
  return json.take();
}

Parsed<Program> program_of_page(std::string_view line) {
  Sources sources;
  const std::uint32_t source = sources.add("the rules of this page", std::string(line));
  Diagnostics diagnostics;
  const auto page = read_json(sources, source, diagnostics);
  if (!page) {
    return diagnostics.first_error();
  }
  const Node* const name = page->find("name");
  const Node* const tree = page->find("rules");
  if (name == nullptr || tree == nullptr) {
    return Problem{"this page holds no rules", "make it once more with `heelrule sheet`"};
  }
  RuleSet rules = read_rule_set(name->text, *tree, diagnostics);
  auto program = compile(std::move(rules), std::move(diagnostics));
  if (!program) {
    return program.diagnostics().first_error();
  }
  return *std::move(program);
}

}  // namespace heelrule
