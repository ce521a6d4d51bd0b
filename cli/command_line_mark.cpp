#include "cli/command_line_mark.hpp"

#include <fmt/format.h>

#include "cli/command_line_options.hpp"

namespace heelrule {
namespace {

namespace options = boost::program_options;

constexpr std::string_view mark_help =
    R"(usage: heelrule mark RULES --reference REF... RECORD... [options]

Marks each record beside the reference inspection of the same client and shoe:
question by question and side by side right, within tolerance, off, missed, or
invented (recorded where the reference says `not seen`). Says what to learn from
each, whether the verdict is that of the reference, and which differences moved
the score. A must that is judged wrongly, a missed safety question and a missed
referral are critical, and cap the mark.

  --reference REF        the trainer's own record; give it again for a panel, of
                         which the consensus counts
  --marks FILE           tolerances, weights, caps and boundaries of your house
                         (YAML); without it those below
  --as KIND              text (the default), json, csv (a row for each record, for
                         the mark book), or html: a page for each student, and of
                         several records one more about all of them
  --to PLACE             a file for the report, or a folder, which several pages
                         need; only you may read what is written there
  --replace              write over files that are there already
  --language TAG         language of what the rule set says, such as es; may be
                         given again, first choice first
  --rules-folder FOLDER  where the rule sets that ship are
  --help                 print this help

A marking file; every part may be left out, and is then as usual:

  title: Bench check, November
  tolerances: {foot_length: 2 mm, heel_counter: 1 level, lining: 3 %}
  level_off: 50 %                  # what a level off costs; two cost twice that
  weights: {loose_nail: 8}         # in place of what a trait is worth in the
                                   # verdict, in points of the score
  critical: {must: learning, safety: again, referral: again}  # the best mark
                                   # that remains; or none
  marks:                           # best first, the last from 0
    secure: {from: 85, means: May inspect alone.}
    able: {from: 70, means: "May inspect, and has it looked through."}
    learning: {from: 50, means: Inspects beside somebody who is able.}
    again: {from: 0, means: Takes the lesson again.}

Without a tolerance of yours a measure is right where it differs from the
reference by no more than the doubt of both (normalised error, ISO 13528).
)";

}  // namespace

Parsed<CommandLine> parse_mark(const std::vector<std::string>& arguments) {
  Options parsed = options_of_all();
  const auto text = [] { return options::value<std::string>(); };
  const auto texts = [] { return options::value<std::vector<std::string>>(); };
  parsed.known.add_options()("reference", texts())("marks", text())("as", text())(
      "language", texts())("to", text())("replace", "");
  if (Problem problem = parse_options("mark", arguments, parsed); !problem.message.empty()) {
    return problem;
  }
  if (parsed.given.count("help") != 0) {
    return CommandLine{PrintCommand{std::string(mark_help)}, {}};
  }
  MarkCommand command;
  command.references = values_of(parsed, "reference");
  if (command.references.empty()) {
    return Problem{"mark needs a reference to mark against",
                   "write `heelrule mark RULES --reference REF RECORD...`"};
  }
  if (parsed.operands.size() < 2) {
    return Problem{"mark needs a rule set and at least one record",
                   "write `heelrule mark RULES --reference REF RECORD...`"};
  }
  command.rules = parsed.operands.front();
  command.records.assign(parsed.operands.begin() + 1, parsed.operands.end());
  command.marking = value_of(parsed, "marks");
  const std::string as = value_of(parsed, "as").value_or("text");
  const auto kind = find_report_kind(as);
  if (!kind) {
    return Problem{fmt::format("there is no report of kind `{}`", as),
                   "write `text`, `json`, `html` or `csv`"};
  }
  command.as = *kind;
  command.languages = values_of(parsed, "language");
  command.destination = destination_in(parsed);
  if (command.as == ReportKind::html && command.records.size() > 1 && !command.destination.to) {
    return Problem{"several pages need a folder", "write `--to FOLDER`"};
  }
  return CommandLine{command, value_of(parsed, "rules-folder").value_or("")};
}

}  // namespace heelrule
