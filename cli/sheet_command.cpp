#include "cli/sheet_command.hpp"

#include <optional>
#include <string>
#include <utility>

#include "cli/load_program.hpp"
#include "cli/load_record.hpp"
#include "cli/output.hpp"
#include "cli/page_sheet.hpp"
#include "engine/recording/blank_yaml.hpp"
#include "engine/recording/paper_sheet.hpp"

namespace heelrule {
namespace {

std::string sheet(const SheetCommand& command, const CompiledRules& rules,
                  std::optional<Node> record) {
  switch (command.as) {
    case SheetKind::yaml:
      return blank_yaml(*rules.program, command.languages);
    case SheetKind::paper:
      return paper_sheet(*rules.program, command.languages);
    case SheetKind::page:
      return page_sheet(rules, {command.blind, command.languages, std::move(record)});
  }
  return {};
}

}  // namespace

ExitStatus run(const SheetCommand& command, const RuleFiles& files) {
  const CompiledRules compiled = compile_rules(command.rules, files);
  if (const auto refused = refuse_unsound(compiled)) {
    return *refused;
  }
  std::optional<Node> record;
  if (command.record) {
    ExitStatus status = ExitStatus::done;
    record = load_record_tree(*command.record, compiled.program->rules, status);
    if (!record) {
      return status;
    }
  }
  if (command.as == SheetKind::page && !page_engine_missing().message.empty()) {
    write_problem(page_engine_missing());
    return ExitStatus::input_missing;
  }
  return write_output(sheet(command, compiled, std::move(record)));
}

}  // namespace heelrule
