#include "cli/command_line_agree.hpp"

#include <fmt/format.h>

#include "cli/command_line_options.hpp"
#include "engine/reading/read_ratings.hpp"

namespace heelrule {
namespace {

namespace options = boost::program_options;

constexpr std::string_view agree_help = R"(usage: heelrule agree RULES RECORD... [options]
       heelrule agree --ratings FILE.csv [options]

How far a class agrees whose students recorded the same shoes: who stands apart,
which questions confuse everybody, which shoes split the class; then for the
grade, the score, each section and each question how much of the agreement is
more than chance, and how far readings scatter. Each figure comes with the
interval that holds the true one 19 times in 20, and in a sentence.

RECORD is a record (YAML or JSON), many in one (.jsonl or .csv), or a folder of
such files. `observer` says whose it is; `client` and the label of the shoe say
which shoe it is of, and are to be the same in all records of it. Not every
student needs to have seen every shoe. A record with a fault is left out, and the
report says so; the exit status is then 65.

  --as KIND              text (the default), json, or html: a page for a
                         browser or a printer
  --to PLACE             a file for the report, or a folder; only you may read it
  --write FILE           propose changes of the rule set, from how far readings
                         scatter and how often a level is taken for the next, as
                         a rule file that builds on it: to be looked through, and
                         to stand in the same folder
  --replace              write over files that are there already
  --language TAG         language of what the rule set says, such as es; may be
                         given again, first choice first
  --rules-folder FOLDER  where the rule sets that ship are
  --help                 print this help

Without a rule set, from a table with a row for each subject and a column for
each observer:

  subject,S-01,S-02,S-03      names of the observers; the first column may be
  shoe 1,firm,firm,medium     left out, and the first line too where it is plain
  shoe 2,soft,,soft           that its cells are ratings. An empty cell, or
  shoe 3,firm,medium,medium   `not seen`, is no rating.

  --scale LEVELS         the levels in order, lowest first: soft,medium,firm;
                         levels that nobody used are kept. Without it numbers are
                         measurements, and words are names without an order.
)";

// A table or records: one of them, and not both.
Problem take_source(const Options& parsed, AgreeCommand& command) {
  if (const auto ratings = value_of(parsed, "ratings")) {
    command.ratings = *ratings;
    if (!parsed.operands.empty()) {
      return {"`--ratings` does not go with a rule set and records", "leave one of the two out"};
    }
    return {};
  }
  if (parsed.given.count("scale") != 0) {
    return {"`--scale` is for a table of ratings",
            "give the table with `--ratings FILE.csv`; a rule set has scales of its own"};
  }
  if (parsed.operands.size() < 2) {
    return {"agree needs a rule set and the records of a class",
            "write `heelrule agree RULES RECORD...`, or `heelrule agree --ratings FILE.csv`"};
  }
  command.rules = parsed.operands.front();
  command.records.assign(parsed.operands.begin() + 1, parsed.operands.end());
  return {};
}

}  // namespace

Parsed<CommandLine> parse_agree(const std::vector<std::string>& arguments) {
  Options parsed = options_of_all();
  const auto text = [] { return options::value<std::string>(); };
  parsed.known.add_options()("ratings", text())("scale", text())("as", text())(
      "language", options::value<std::vector<std::string>>())("to", text())("write", text())(
      "replace", "");
  if (Problem problem = parse_options("agree", arguments, parsed); !problem.message.empty()) {
    return problem;
  }
  if (parsed.given.count("help") != 0) {
    return CommandLine{PrintCommand{std::string(agree_help)}, {}};
  }
  AgreeCommand command;
  if (Problem problem = take_source(parsed, command); !problem.message.empty()) {
    return problem;
  }
  if (const auto scale = value_of(parsed, "scale")) {
    const auto levels = parse_scale(*scale);
    if (!levels) {
      return levels.problem();
    }
    command.scale = *levels;
  }
  const std::string as = value_of(parsed, "as").value_or("text");
  const auto kind = find_report_kind(as);
  if (!kind || *kind == ReportKind::csv) {
    return Problem{fmt::format("there is no report of kind `{}`", as),
                   "write `text`, `json` or `html`"};
  }
  command.as = *kind;
  command.languages = values_of(parsed, "language");
  command.destination = destination_in(parsed);
  command.proposal = value_of(parsed, "write");
  if (command.proposal && !command.ratings.empty()) {
    return Problem{"`--write` is for the records of a class",
                   "a table of ratings has no rule set that could be changed"};
  }
  return CommandLine{command, value_of(parsed, "rules-folder").value_or("")};
}

}  // namespace heelrule
