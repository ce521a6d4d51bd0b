#include "cli/command_line_pass.hpp"

#include <fmt/format.h>

#include "cli/command_line_options.hpp"

namespace heelrule {
namespace {

namespace options = boost::program_options;

constexpr std::string_view pass_help = R"(usage: heelrule pass SHEET [options]

Sets a pass mark, by each method for which the sheet has what it needs, with its
standard error and how many would pass. The sheet is a file in YAML or JSON:

  title: Bench check, November
  most: 100                             # the highest mark
  ratings: [fail, borderline, pass, good]   # of the whole work, worst first
  borderline: borderline                # the one that is neither pass nor fail
  students:                             # borderline regression, borderline group
    S-01: {mark: 71.5, rating: pass}
    S-02: {mark: 48, rating: borderline}
  judges:                               # Angoff: how likely somebody who just
    T-01: [60 %, 75 %, 50 %]            # passes gets each task right
    T-02: [50 %, 80 %, 55 %]
  acceptable: {marks: 50 .. 65, fails: 5 % .. 40 %}     # Hofstee

The assessor's rating is of the whole work, given before the mark is known.

  --as KIND              text (the default), json, or html: a page for a
                         browser or a printer
  --to PLACE             a file for the report, or a folder; only you may read it
  --replace              write over a file that is there already
  --help                 print this help
)";

}  // namespace

Parsed<CommandLine> parse_pass(const std::vector<std::string>& arguments) {
  Options parsed = options_of_all();
  parsed.known.add_options()("as", options::value<std::string>())(
      "to", options::value<std::string>())("replace", "");
  if (Problem problem = parse_options("pass", arguments, parsed); !problem.message.empty()) {
    return problem;
  }
  if (parsed.given.count("help") != 0) {
    return CommandLine{PrintCommand{std::string(pass_help)}, {}};
  }
  if (parsed.operands.size() != 1) {
    return Problem{"pass needs one pass sheet", "write `heelrule pass SHEET`"};
  }
  const std::string as = value_of(parsed, "as").value_or("text");
  const auto kind = find_report_kind(as);
  if (!kind || *kind == ReportKind::csv) {
    return Problem{fmt::format("there is no report of kind `{}`", as),
                   "write `text`, `json` or `html`"};
  }
  return CommandLine{PassCommand{parsed.operands.front(), *kind, destination_in(parsed)},
                     value_of(parsed, "rules-folder").value_or("")};
}

}  // namespace heelrule
