#include "cli/command_line.hpp"

#include <fmt/format.h>

#include <boost/program_options.hpp>

#include "engine/quantity/nearest.hpp"

namespace heelrule {
namespace {

namespace options = boost::program_options;

constexpr std::string_view general_help =
    R"(heelrule: house rules for feet, socks and shoes, and what they say of a pair

usage: heelrule COMMAND ...

  grade RULES INSPECTION...   the graded report, with the reason of each finding
  proof RULES...              every mistake in a rule set, each at its place

`heelrule COMMAND --help` tells more. RULES is a file, or the name of a rule set
that ships: everyday, child, work, older-adult, at-risk-foot; or a part of these:
safety, feet, hosiery, fit, sole, build, wear.

exit status: 0 done; 1 done, and the answer is no; 64 usage; 65 bad data;
66 input missing; 73 cannot write; 74 input or output error
)";

constexpr std::string_view grade_help = R"(usage: heelrule grade RULES INSPECTION... [options]

Grades recorded inspections (YAML or JSON) against a rule set and prints a
report for each: safety first, the grade and whether it stands, what failed,
passed and was not seen, with the reasons, and advice by what it would gain.

  --as KIND              text (the default) or json
  --language TAG         language of the report, such as es; may be given
                         again, first choice first
  --at-least GRADE       exit status 1 unless every grade is this one or better;
                         a provisional grade counts as the worst that it can
                         still become
  --rules-folder FOLDER  where the rule sets that ship are
  --help                 print this help
)";

constexpr std::string_view proof_help = R"(usage: heelrule proof RULES... [options]

Reads each rule set with all that it builds on and prints every mistake at its
place, with a hint. Exit status 0 if there is none, 1 if there is one. Warnings
(a missing translation, a section without a rule) do not count as mistakes.

  --rules-folder FOLDER  where the rule sets that ship are
  --help                 print this help
)";

struct Options {
  options::options_description known;
  options::variables_map given;
  std::vector<std::string> operands;
};

// The help texts are written by hand, so the library is told names and kinds alone.
Options options_of_all() {
  Options all;
  all.known.add_options()("help,h", "")("rules-folder", options::value<std::string>());
  return all;
}

// The library guesses at abbreviations unless told not to, and echoes what it does not know as it
// stands.
Problem parse(const std::vector<std::string>& arguments, Options& result) {
  using style = options::command_line_style::style_t;
  const int exact = style::allow_long | style::allow_short | style::short_allow_next |
                    style::long_allow_next | style::long_allow_adjacent |
                    style::allow_dash_for_short;
  options::options_description all;
  all.add(result.known).add_options()("operands", options::value<std::vector<std::string>>());
  options::positional_options_description positional;
  positional.add("operands", -1);
  try {
    options::store(options::command_line_parser(arguments)
                       .options(all)
                       .positional(positional)
                       .style(exact)
                       .run(),
                   result.given);
  } catch (const options::unknown_option& unknown) {
    Nearest nearest(unknown.get_option_name());
    for (const auto& option : result.known.options()) {
      nearest.offer("--" + option->long_name());
    }
    return {fmt::format("there is no option `{}`", unknown.get_option_name()), nearest.question()};
  } catch (const options::error& problem) {
    return {problem.what(), ""};
  }
  if (result.given.count("operands") != 0) {
    result.operands = result.given["operands"].as<std::vector<std::string>>();
  }
  return {};
}

std::optional<std::string> value_of(const Options& parsed, const char* name) {
  if (parsed.given.count(name) == 0) {
    return std::nullopt;
  }
  return parsed.given[name].as<std::string>();
}

Parsed<CommandLine> parse_grade(const std::vector<std::string>& arguments) {
  Options parsed = options_of_all();
  parsed.known.add_options()("as", options::value<std::string>())(
      "language", options::value<std::vector<std::string>>())("at-least",
                                                              options::value<std::string>());
  if (Problem problem = parse(arguments, parsed); !problem.message.empty()) {
    return problem;
  }
  if (parsed.given.count("help") != 0) {
    return CommandLine{PrintCommand{std::string(grade_help)}, {}};
  }
  if (parsed.operands.size() < 2) {
    return Problem{"grade needs a rule set and at least one inspection",
                   "write `heelrule grade RULES INSPECTION...`"};
  }
  GradeCommand command;
  command.rules = parsed.operands.front();
  command.inspections.assign(parsed.operands.begin() + 1, parsed.operands.end());
  const std::string as = value_of(parsed, "as").value_or("text");
  if (as != "text" && as != "json") {
    return Problem{fmt::format("there is no report of kind `{}`", as), "write `text` or `json`"};
  }
  command.as = as == "json" ? ReportKind::json : ReportKind::text;
  if (parsed.given.count("language") != 0) {
    command.languages = parsed.given["language"].as<std::vector<std::string>>();
  }
  command.at_least = value_of(parsed, "at-least");
  return CommandLine{command, value_of(parsed, "rules-folder").value_or("")};
}

Parsed<CommandLine> parse_proof(const std::vector<std::string>& arguments) {
  Options parsed = options_of_all();
  if (Problem problem = parse(arguments, parsed); !problem.message.empty()) {
    return problem;
  }
  if (parsed.given.count("help") != 0) {
    return CommandLine{PrintCommand{std::string(proof_help)}, {}};
  }
  if (parsed.operands.empty()) {
    return Problem{"proof needs a rule set", "write `heelrule proof RULES...`"};
  }
  return CommandLine{ProofCommand{parsed.operands}, value_of(parsed, "rules-folder").value_or("")};
}

}  // namespace

Parsed<CommandLine> parse_command_line(const std::vector<std::string>& arguments) {
  if (arguments.empty()) {
    return Problem{"no command was given", "write `heelrule --help` for all of them"};
  }
  const std::string& name = arguments.front();
  const std::vector<std::string> rest(arguments.begin() + 1, arguments.end());
  if (name == "--help" || name == "-h" || name == "help") {
    return CommandLine{PrintCommand{std::string(general_help)}, {}};
  }
  if (name == "--version") {
    return CommandLine{PrintCommand{fmt::format("heelrule {}\n", HEELRULE_VERSION)}, {}};
  }
  if (name == "grade") {
    return parse_grade(rest);
  }
  if (name == "proof") {
    return parse_proof(rest);
  }
  Nearest nearest(name);
  nearest.offer("grade");
  nearest.offer("proof");
  return Problem{fmt::format("there is no command `{}`", name),
                 nearest.found() ? nearest.question() : "write `heelrule --help` for all of them"};
}

}  // namespace heelrule
