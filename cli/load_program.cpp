#include "cli/load_program.hpp"

#include <fmt/format.h>

#include <utility>

#include "cli/output.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/source/characters.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {

CompiledRules compile_rules(const std::string& name, const RuleFiles& files) {
  Sources sources;
  const FindFile find = [&](std::string_view wanted, std::string_view from) {
    return files.find(wanted, from);
  };
  LoadedRules loaded = load_rules(name, find, sources);
  if (!loaded.complete) {
    return {std::move(sources),
            Checked<Program>(std::move(loaded.diagnostics)),
            {},
            std::move(loaded.not_found)};
  }
  auto program = compile(std::move(loaded.rules), std::move(loaded.diagnostics));
  return {std::move(sources), std::move(program), std::move(loaded.tree), {}};
}

std::optional<ExitStatus> refuse_unsound(const CompiledRules& compiled) {
  if (!compiled.not_found.message.empty()) {
    write_problem(compiled.not_found);
    return ExitStatus::input_missing;
  }
  if (!compiled.program) {
    write_error(show(compiled.program.diagnostics(), compiled.sources));
    return ExitStatus::bad_data;
  }
  return std::nullopt;
}

void write_problem(const Problem& problem) {
  write_error(fmt::format("heelrule: error: {}\n", shown_safely(problem.message)));
  if (!problem.hint.empty()) {
    write_error(fmt::format("hint: {}\n", shown_safely(problem.hint)));
  }
}

}  // namespace heelrule
