#include "cli/command_line_sheet.hpp"

#include <fmt/format.h>

#include "cli/command_line_options.hpp"

namespace heelrule {
namespace {

namespace options = boost::program_options;

constexpr std::string_view sheet_help = R"(usage: heelrule sheet RULES [options] >FILE

Prints a blank sheet of a rule set: every question in the order of the bench,
with its unit, its plausible range, its levels and how to take it.

  --as KIND              yaml (the default): a file to fill in with an editor
                         and to grade; page: one HTML file that works without
                         a network on a phone, a tablet or a desk, checks
                         answers as they are typed, and saves the record
  --blind                a page that does not show what the answers come to,
                         for examinations; referrals it shows all the same
  --language TAG         language of the questions, such as es; may be given
                         again, first choice first
  --rules-folder FOLDER  where the rule sets that ship are
  --help                 print this help
)";

}  // namespace

Parsed<CommandLine> parse_sheet(const std::vector<std::string>& arguments) {
  Options parsed = options_of_all();
  parsed.known.add_options()("as", options::value<std::string>())(
      "language", options::value<std::vector<std::string>>())("blind", "");
  if (Problem problem = parse_options("sheet", arguments, parsed); !problem.message.empty()) {
    return problem;
  }
  if (parsed.given.count("help") != 0) {
    return CommandLine{PrintCommand{std::string(sheet_help)}, {}};
  }
  if (parsed.operands.size() != 1) {
    return Problem{"sheet needs one rule set", "write `heelrule sheet RULES`"};
  }
  const std::string as = value_of(parsed, "as").value_or("yaml");
  if (as != "yaml" && as != "page") {
    return Problem{fmt::format("there is no sheet of kind `{}`", as), "write `yaml` or `page`"};
  }
  SheetCommand command;
  command.rules = parsed.operands.front();
  command.as = as == "page" ? SheetKind::page : SheetKind::yaml;
  command.blind = parsed.given.count("blind") != 0;
  if (command.blind && command.as != SheetKind::page) {
    return Problem{"`--blind` is for a page", "write `--as page --blind`, or leave it out"};
  }
  command.languages = values_of(parsed, "language");
  return CommandLine{command, value_of(parsed, "rules-folder").value_or("")};
}

}  // namespace heelrule
