#include <exception>
#include <string>
#include <variant>
#include <vector>

#include "cli/agree_command.hpp"
#include "cli/command_line.hpp"
#include "cli/grade_command.hpp"
#include "cli/load_program.hpp"
#include "cli/mark_command.hpp"
#include "cli/output.hpp"
#include "cli/pass_command.hpp"
#include "cli/proof_command.hpp"
#include "cli/record_command.hpp"
#include "cli/sheet_command.hpp"
#include "cli/size_command.hpp"

namespace heelrule {
namespace {

ExitStatus run(const PrintCommand& command, const RuleFiles&) { return write_output(command.text); }

ExitStatus run_command_line(const std::vector<std::string>& arguments) {
  const auto line = parse_command_line(arguments);
  if (!line) {
    write_problem(line.problem());
    return ExitStatus::usage;
  }
  const RuleFiles files(line->rules_folder.empty() ? shipped_rules_folder() : line->rules_folder);
  return std::visit([&](const auto& command) { return run(command, files); }, line->command);
}

}  // namespace
}  // namespace heelrule

int main(int count, char** arguments) {
  using heelrule::ExitStatus;
  heelrule::prepare_streams();
  try {
    return static_cast<int>(heelrule::run_command_line({arguments + 1, arguments + count}));
  } catch (const std::exception& fault) {
    heelrule::write_problem({std::string("a fault of heelrule itself: ") + fault.what(),
                             "please report it, with the files that led to it"});
    return static_cast<int>(ExitStatus::own_fault);
  }
}
