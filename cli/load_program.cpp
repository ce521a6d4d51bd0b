#include "cli/load_program.hpp"

#include <fmt/format.h>

#include <utility>

#include "cli/output.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {

CompiledRules compile_rules(const std::string& name, const RuleFiles& files) {
  Sources sources;
  const FindFile find = [&](std::string_view wanted, std::string_view from) {
    return files.find(wanted, from);
  };
  LoadedRules loaded = load_rules(name, find, sources);
  if (!loaded.complete) {
    return {std::move(sources), Checked<Program>(std::move(loaded.diagnostics)),
            std::move(loaded.not_found)};
  }
  auto program = compile(std::move(loaded.rules), std::move(loaded.diagnostics));
  return {std::move(sources), std::move(program), {}};
}

void write_problem(const Problem& problem) {
  write_error(fmt::format("heelrule: error: {}\n", shown_safely(problem.message)));
  if (!problem.hint.empty()) {
    write_error(fmt::format("hint: {}\n", shown_safely(problem.hint)));
  }
}

}  // namespace heelrule
