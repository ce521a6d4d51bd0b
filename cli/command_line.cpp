#include "cli/command_line.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <boost/program_options.hpp>
#include <thread>
#include <utility>

#include "cli/command_line_agree.hpp"
#include "cli/command_line_mark.hpp"
#include "cli/command_line_options.hpp"
#include "cli/command_line_pass.hpp"
#include "cli/command_line_record.hpp"
#include "cli/command_line_sheet.hpp"
#include "cli/command_line_size.hpp"
#include "engine/quantity/decimal.hpp"
#include "engine/quantity/nearest.hpp"
#include "version.hpp"

namespace heelrule {
namespace {

namespace options = boost::program_options;

constexpr std::string_view general_help =
    R"(heelrule: house rules for feet, socks and shoes, and what they say of a pair

usage: heelrule COMMAND ...

  grade RULES INSPECTION...   the graded report, with the reason of each finding
  proof RULES...              every mistake in a rule set, each at its place
  record RULES --to FILE      an inspection, question by question
  sheet RULES                 a blank sheet to record an inspection on
  size RULES INSPECTION...    two feet to sizes, socks, and when to measure again
  agree RULES RECORD...       how far a class agrees, and what keeps it from it
  mark RULES RECORD...        records beside a reference, and what to learn from it
  pass SHEET                  a pass mark, with its error and who would pass

`heelrule COMMAND --help` tells more. RULES is a file, or the name of a rule set
that ships: everyday, child, work, older-adult, at-risk-foot; or one of their
parts: safety, feet, hosiery, fit, sole, build, wear.

exit status: 0 done; 1 done, and the answer is no; 64 usage; 65 bad data;
66 input missing; 73 cannot write; 74 input or output error
)";

constexpr std::string_view grade_help = R"(usage: heelrule grade RULES INSPECTION... [options]
       heelrule grade RULES FILE.jsonl|FILE.csv|- [options]

Grades recorded inspections (YAML or JSON) against a rule set and prints a
report for each: safety first, the grade and whether it stands, what failed,
passed and was not seen, with the reasons, and advice by what it would gain.

  --as KIND              text (the default), json, html (a page to look at, print
                         and hand out), or csv (a row for each finding; of many
                         records, a row for each)
  --for READER           whom a page is for: assessor (the default; everything),
                         student (what was missed, and how to take it), or
                         client (one sheet in plain words)
  --compare EARLIER      a record of the same client at an earlier date: the page
                         says what grew, what wore, and why the grade moved
  --together             with several pages, one more about all of them
  --to PLACE             a file for the report, or a folder for several pages;
                         only you may read what is written there
  --replace              write over a file that is there already
  --mark FILE            the mark of your school, PNG or SVG, for pages
  --template FILE        your own page, in Mustache (examples/own-page); referrals
                         and cautions stand around it in any case
  --without-client       leave out the client's code and all notes
  --language TAG         language of the report, such as es; may be given
                         again, first choice first
  --at-least GRADE       exit status 1 unless every grade is this one or better;
                         a provisional grade counts as the worst that it can
                         still become
  --exactly              take each reading as it stands, and say nothing of doubt
  --rules-folder FOLDER  where the rule sets that ship are
  --help                 print this help

Many records, one on each line of a file or of standard input (`-`), give one
line of JSON each, in order, as with --exactly. One that cannot be read gives a
line that says why; in the end the exit status is 65. Ctrl-C ends after whole
lines.

  --brief                score, grade, cautions and referrals alone
  --failed               the same, and in words what did not pass in full
  --strict               stop at the first record that cannot be read
  --threads N            work with so many threads (all processors)
  --from KIND            jsonl or csv, where the name of the file does not tell
)";

constexpr std::string_view proof_help = R"(usage: heelrule proof RULES... [options]

Reads each rule set with all that it builds on and prints every mistake at its
place, with a hint. Exit status 0 if there is none, 1 if there is one. Warnings
(a missing translation, a section without a rule) do not count as mistakes.

  --rules-folder FOLDER  where the rule sets that ship are
  --help                 print this help
)";

constexpr std::size_t most_threads = 256;

bool ends_as_many(const std::string& path) {
  return path == "-" || path.ends_with(".jsonl") || path.ends_with(".csv");
}

Parsed<std::size_t> parse_threads(const Options& parsed) {
  const auto written = value_of(parsed, "threads");
  if (!written) {
    return std::clamp<std::size_t>(std::thread::hardware_concurrency(), 1, most_threads);
  }
  const auto number = parse_decimal(*written);
  if (!number || number->exponent != 0 || number->negative || number->digits < 1 ||
      number->digits > most_threads) {
    return Problem{fmt::format("`{}` is no number of threads", *written),
                   fmt::format("write a whole number from 1 to {}", most_threads)};
  }
  return static_cast<std::size_t>(number->digits);
}

Problem refuse_bulk_options(const Options& parsed) {
  for (const char* name : {"brief", "failed", "strict", "threads"}) {
    if (parsed.given.count(name) != 0) {
      return {fmt::format("`--{}` is for many records", name),
              "give them as a FILE.jsonl or FILE.csv, or as `-`"};
    }
  }
  return {};
}

Parsed<BulkOrder> parse_bulk(const Options& parsed, const std::vector<std::string>& files) {
  BulkOrder order;
  if (files.size() != 1) {
    return Problem{"many records come from one file at a time",
                   "write `cat FILE... | heelrule grade RULES -`"};
  }
  const std::string usual = files.front().ends_with(".csv") ? "csv" : "jsonl";
  const std::string from = value_of(parsed, "from").value_or(usual);
  if (from != "jsonl" && from != "csv") {
    return Problem{fmt::format("there are no records of kind `{}`", from),
                   "write `jsonl` or `csv`"};
  }
  order.from = from == "csv" ? RecordKind::csv : RecordKind::json_lines;
  const bool brief = parsed.given.count("brief") != 0;
  const bool failed = parsed.given.count("failed") != 0;
  const std::string as = value_of(parsed, "as").value_or("json");
  if (as == "text" || as == "html") {
    return Problem{fmt::format("many records give no {}", as == "text" ? "text" : "pages"),
                   "write `--as json` or `--as csv`"};
  }
  for (const char* name :
       {"to", "mark", "without-client", "for", "template", "compare", "together"}) {
    if (parsed.given.count(name) != 0) {
      return Problem{fmt::format("`--{}` is not for many records", name), "leave it out"};
    }
  }
  if ((brief && failed) || (as == "csv" && (brief || failed))) {
    return Problem{fmt::format("`--{}` does not go with `{}`", brief ? "brief" : "failed",
                               as == "csv" ? "--as csv" : "--failed"),
                   "leave one of the two out"};
  }
  order.detail = brief ? Detail::brief : failed ? Detail::failed : Detail::full;
  order.stop_at_fault = parsed.given.count("strict") != 0;
  const auto threads = parse_threads(parsed);
  if (!threads) {
    return threads.problem();
  }
  order.threads = *threads;
  return order;
}

Problem page_problem(const Options& parsed, const GradeCommand& command) {
  const bool is_page = command.as == ReportKind::html;
  for (const char* name : {"mark", "template", "for", "compare", "together"}) {
    if (parsed.given.count(name) != 0 && !is_page) {
      return {fmt::format("`--{}` is for pages", name), "write `--as html` with it"};
    }
  }
  if (command.destination.existing == Existing::replace && !command.destination.to) {
    return {"`--replace` is for files", "write `--to FILE` with it"};
  }
  if (command.earlier && command.inspections.size() > 1) {
    return {"`--compare` is for one record", "give one, and the earlier one with `--compare`"};
  }
  if (is_page && (command.inspections.size() > 1 || command.together) && !command.destination.to) {
    return {"several pages need a folder", "write `--to FOLDER`"};
  }
  return {};
}

Parsed<CommandLine> parse_grade(const std::vector<std::string>& arguments) {
  Options parsed = options_of_all();
  const auto text = [] { return options::value<std::string>(); };
  parsed.known.add_options()("as", text())("language", options::value<std::vector<std::string>>())(
      "at-least", text())("exactly", "")("brief", "")("failed", "")("strict", "")(
      "threads", text())("from", text())("to", text())("replace", "")("mark", text())(
      "without-client", "")("for", text())("template", text())("compare", text())("together", "");
  if (Problem problem = parse_options("grade", arguments, parsed); !problem.message.empty()) {
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
  const bool many =
      parsed.given.count("from") != 0 ||
      std::any_of(command.inspections.begin(), command.inspections.end(), ends_as_many);
  const std::string as = value_of(parsed, "as").value_or(many ? "json" : "text");
  const auto kind = find_report_kind(as);
  if (!kind) {
    return Problem{fmt::format("there is no report of kind `{}`", as),
                   "write `text`, `json`, `html` or `csv`"};
  }
  command.as = *kind;
  if (many) {
    const auto order = parse_bulk(parsed, command.inspections);
    if (!order) {
      return order.problem();
    }
    command.bulk = *order;
  } else if (Problem problem = refuse_bulk_options(parsed); !problem.message.empty()) {
    return problem;
  }
  command.languages = values_of(parsed, "language");
  command.at_least = value_of(parsed, "at-least");
  command.exactly = parsed.given.count("exactly") != 0;
  command.destination = destination_in(parsed);
  command.mark = value_of(parsed, "mark");
  command.without_client = parsed.given.count("without-client") != 0;
  command.template_file = value_of(parsed, "template");
  command.earlier = value_of(parsed, "compare");
  command.together = parsed.given.count("together") != 0;
  const std::string reader = value_of(parsed, "for").value_or("assessor");
  const auto found_reader = find_reader(reader);
  if (!found_reader) {
    return Problem{fmt::format("there is no page for `{}`", reader),
                   "write `assessor`, `student` or `client`"};
  }
  command.reader = *found_reader;
  if (Problem problem = page_problem(parsed, command); !problem.message.empty()) {
    return problem;
  }
  return CommandLine{command, value_of(parsed, "rules-folder").value_or("")};
}

Parsed<CommandLine> parse_proof(const std::vector<std::string>& arguments) {
  Options parsed = options_of_all();
  if (Problem problem = parse_options("proof", arguments, parsed); !problem.message.empty()) {
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
    return CommandLine{PrintCommand{fmt::format("heelrule {}\n", version)}, {}};
  }
  if (name == "grade") {
    return parse_grade(rest);
  }
  if (name == "proof") {
    return parse_proof(rest);
  }
  if (name == "record") {
    return parse_record(rest);
  }
  if (name == "sheet") {
    return parse_sheet(rest);
  }
  if (name == "size") {
    return parse_size(rest);
  }
  if (name == "agree") {
    return parse_agree(rest);
  }
  if (name == "mark") {
    return parse_mark(rest);
  }
  if (name == "pass") {
    return parse_pass(rest);
  }
  Nearest nearest(name);
  for (const std::string_view known : {"grade", "proof", "record", "sheet", "size", "agree", "mark",
                                       "pass", "help", "--help", "--version"}) {
    nearest.offer(known);
  }
  return Problem{fmt::format("there is no command `{}`", name),
                 nearest.found() ? nearest.question() : "write `heelrule --help` for all of them"};
}

}  // namespace heelrule
