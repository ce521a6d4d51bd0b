#include "cli/record_command.hpp"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <utility>

#include "cli/files.hpp"
#include "cli/load_program.hpp"
#include "cli/output.hpp"
#include "cli/sitting.hpp"
#include "engine/reading/read_document.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

ExitStatus ask_anew(const RecordCommand& command, const RuleFiles& files) {
  const CompiledRules compiled = compile_rules(command.rules, files);
  if (const auto refused = refuse_unsound(compiled)) {
    return *refused;
  }
  return Sitting(command, *compiled.program, std::nullopt).run();
}

// The rule set that a record names as its own; empty where it names none.
std::string rules_of(const Node& record) {
  const Node* head = record.find("inspection");
  const Node* rules = head == nullptr ? nullptr : head->find("rules");
  return rules == nullptr ? std::string{} : rules->text;
}

ExitStatus amend(const RecordCommand& command, const RuleFiles& files) {
  const auto text = read_file(command.file);
  if (!text) {
    write_problem(text.problem());
    return ExitStatus::input_missing;
  }
  Sources sources;
  const std::uint32_t source =
      sources.add(command.file, std::string(without_byte_order_mark(*text)));
  Diagnostics diagnostics;
  auto tree = read_document(sources, source, diagnostics);
  if (!tree) {
    write_error(show(diagnostics, sources));
    return ExitStatus::bad_data;
  }
  const std::string rules = command.rules.empty() ? rules_of(*tree) : command.rules;
  if (rules.empty()) {
    write_problem({fmt::format("`{}` does not say for which rule set it was made", command.file),
                   "name one: `heelrule record --amend FILE RULES`"});
    return ExitStatus::bad_data;
  }
  const CompiledRules compiled = compile_rules(rules, files);
  if (const auto refused = refuse_unsound(compiled)) {
    return *refused;
  }
  read_inspection(*tree, compiled.program->rules, diagnostics);
  write_error(show(diagnostics, sources));
  if (diagnostics.has_errors()) {
    return ExitStatus::bad_data;
  }
  return Sitting(command, *compiled.program, FoundRecord{*text, *std::move(tree)}).run();
}

}  // namespace

ExitStatus run(const RecordCommand& command, const RuleFiles& files) {
  return command.amend ? amend(command, files) : ask_anew(command, files);
}

}  // namespace heelrule
