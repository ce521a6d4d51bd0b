#include "cli/command_line_record.hpp"

#include "cli/command_line_options.hpp"

namespace heelrule {
namespace {

namespace options = boost::program_options;

constexpr std::string_view record_help =
    R"(usage: heelrule record RULES --to FILE [options]
       heelrule record --amend FILE [RULES] [options]

Asks for an inspection, one question at a time in the order of the bench, and
writes it to FILE. Values are written as in a file: `243 mm`, `246, 247 mm`,
`firm`, `firm # creased` with a note. `?` tells how to measure and what else may
be typed: `skip REASON`, `back`, `go PLACE`, `review`, `finish`.

Each answer is kept in FILE.journal before the next question is asked. After
Ctrl-C, a hang-up or a power cut the same command goes on where it was; once
the record is written the journal goes away. Answers may also come from a pipe;
one that is refused then ends the command with exit status 65.

  --to FILE              the record to write, readable by its owner alone
  --replace              FILE may be there already, and is replaced in the end
  --amend FILE           change single answers of a record; it keeps what stood
                         there before, with when and by whom
  --language TAG         language of the questions, such as es; may be given
                         again, first choice first
  --rules-folder FOLDER  where the rule sets that ship are
  --help                 print this help

Exit status 1 if the answers end before `finish`.
)";

constexpr std::string_view usage =
    "write `heelrule record RULES --to FILE`, or `heelrule record --amend FILE`";

}  // namespace

Parsed<CommandLine> parse_record(const std::vector<std::string>& arguments) {
  Options parsed = options_of_all();
  const auto text = [] { return options::value<std::string>(); };
  parsed.known.add_options()("to", text())("amend", text())("replace", "")(
      "language", options::value<std::vector<std::string>>());
  if (Problem problem = parse_options("record", arguments, parsed); !problem.message.empty()) {
    return problem;
  }
  if (parsed.given.count("help") != 0) {
    return CommandLine{PrintCommand{std::string(record_help)}, {}};
  }
  RecordCommand command;
  command.amend = parsed.given.count("amend") != 0;
  command.replace = parsed.given.count("replace") != 0;
  const bool has_target = parsed.given.count("to") != 0;
  if (command.amend && (has_target || command.replace)) {
    return Problem{"`--amend` changes the record itself", "leave `--to` and `--replace` out"};
  }
  if (!command.amend && !has_target) {
    return Problem{"record needs a file to write to", std::string(usage)};
  }
  if (parsed.operands.size() > 1 || (!command.amend && parsed.operands.empty())) {
    return Problem{"record needs one rule set", std::string(usage)};
  }
  command.rules = parsed.operands.empty() ? "" : parsed.operands.front();
  command.file = value_of(parsed, command.amend ? "amend" : "to").value_or("");
  command.languages = values_of(parsed, "language");
  return CommandLine{command, value_of(parsed, "rules-folder").value_or("")};
}

}  // namespace heelrule
