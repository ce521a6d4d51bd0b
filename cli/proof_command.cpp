#include "cli/proof_command.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "cli/load_program.hpp"
#include "cli/output.hpp"
#include "engine/source/characters.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

std::string counted(std::size_t number, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", number, number == 1 ? one : many);
}

std::string summary(const std::string& asked_for, const CompiledRules& compiled) {
  const std::string name = shown_safely(asked_for);
  const Diagnostics& found = compiled.program.diagnostics();
  std::string faults;
  if (found.error_count() > 0) {
    faults = counted(found.error_count(), "error", "errors");
  }
  if (found.warning_count() > 0) {
    faults += (faults.empty() ? "" : ", ") + counted(found.warning_count(), "warning", "warnings");
  }
  if (!compiled.program) {
    return fmt::format("{}: {}\n", name, faults);
  }
  const RuleSet& rules = compiled.program->rules;
  return fmt::format("{}: sound, {}, {}{}{}\n", name, counted(rules.rules.size(), "rule", "rules"),
                     counted(rules.traits.size(), "trait", "traits"), faults.empty() ? "" : "; ",
                     faults);
}

}  // namespace

ExitStatus run(const ProofCommand& command, const RuleFiles& files) {
  ExitStatus status = ExitStatus::done;
  const auto worsen = [&](ExitStatus found) { status = std::max(status, found); };
  for (const std::string& name : command.rules) {
    const CompiledRules compiled = compile_rules(name, files);
    if (!compiled.not_found.message.empty()) {
      write_problem(compiled.not_found);
      worsen(ExitStatus::input_missing);
      continue;
    }
    write_error(show(compiled.program.diagnostics(), compiled.sources));
    worsen(write_output(summary(name, compiled)));
    if (!compiled.program) {
      worsen(ExitStatus::answer_is_no);
    }
  }
  return status;
}

}  // namespace heelrule
