#include "cli/sheet_command.hpp"

#include <string>

#include "cli/load_program.hpp"
#include "cli/output.hpp"
#include "engine/recording/blank_yaml.hpp"
#include "engine/recording/paper_sheet.hpp"

namespace heelrule {
namespace {

std::string sheet(const SheetCommand& command, const Program& program) {
  switch (command.as) {
    case SheetKind::yaml:
      return blank_yaml(program, command.languages);
    case SheetKind::paper:
      return paper_sheet(program, command.languages);
  }
  return {};
}

}  // namespace

ExitStatus run(const SheetCommand& command, const RuleFiles& files) {
  const CompiledRules compiled = compile_rules(command.rules, files);
  if (const auto refused = refuse_unsound(compiled)) {
    return *refused;
  }
  return write_output(sheet(command, *compiled.program));
}

}  // namespace heelrule
