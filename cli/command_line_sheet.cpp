#include "cli/command_line_sheet.hpp"

#include <fmt/format.h>

#include <optional>
#include <string_view>

#include "cli/command_line_options.hpp"

namespace heelrule {
namespace {

namespace options = boost::program_options;

constexpr std::string_view sheet_help = R"(usage: heelrule sheet RULES [options] >FILE

Prints a blank sheet of a rule set: every question in the order of the bench,
with its unit, its plausible range, its levels and how to take it.

  --as KIND              yaml (the default): a file to fill in with an editor
                         and to grade; paper: a page to print on A4 or Letter,
                         with boxes, lines and rulers, and how to take each
                         reading on its back; page: one HTML file that works
                         without a network on a phone, a tablet or a desk,
                         checks answers as they are typed, and saves the record
  --blind                a page that does not show what the answers come to,
                         for examinations; referrals it shows all the same
  --with RECORD          a page that begins with the answers of this record, YAML
                         or JSON, to go on with; it is health data, as the
                         record is
  --language TAG         language of the questions, such as es; may be given
                         again, first choice first
  --rules-folder FOLDER  where the rule sets that ship are
  --help                 print this help
)";

std::optional<SheetKind> sheet_kind(const std::string& name) {
  return name == "yaml"    ? std::optional(SheetKind::yaml)
         : name == "paper" ? std::optional(SheetKind::paper)
         : name == "page"  ? std::optional(SheetKind::page)
                           : std::nullopt;
}

}  // namespace

Parsed<CommandLine> parse_sheet(const std::vector<std::string>& arguments) {
  Options parsed = options_of_all();
  parsed.known.add_options()("as", options::value<std::string>())(
      "language", options::value<std::vector<std::string>>())("blind", "")(
      "with", options::value<std::string>());
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
  const std::optional<SheetKind> kind = sheet_kind(as);
  if (!kind) {
    return Problem{fmt::format("there is no sheet of kind `{}`", as),
                   "write `yaml`, `paper` or `page`"};
  }
  SheetCommand command;
  command.rules = parsed.operands.front();
  command.as = *kind;
  command.blind = parsed.given.count("blind") != 0;
  if (command.blind && command.as != SheetKind::page) {
    return Problem{"`--blind` is for a page", "write `--as page --blind`, or leave it out"};
  }
  command.record = value_of(parsed, "with");
  if (command.record && command.as != SheetKind::page) {
    return Problem{"`--with` is for a page", "write `--as page --with RECORD`, or leave it out"};
  }
  command.languages = values_of(parsed, "language");
  return CommandLine{command, value_of(parsed, "rules-folder").value_or("")};
}

}  // namespace heelrule
