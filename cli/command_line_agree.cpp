#include "cli/command_line_agree.hpp"

#include <fmt/format.h>

#include "cli/command_line_options.hpp"
#include "engine/reading/read_ratings.hpp"

namespace heelrule {
namespace {

namespace options = boost::program_options;

constexpr std::string_view agree_help = R"(usage: heelrule agree --ratings FILE.csv [options]

How far observers agree who rated the same subjects: what share of their ratings
agree, what is left when chance is taken off, how far measurements scatter; each
with the interval that holds the true figure 19 times in 20, and in a sentence.

FILE.csv has a row for each subject and a column for each observer:

  subject,S-01,S-02,S-03      names of the observers; the first column may be
  shoe 1,firm,firm,medium     left out, and the first line too where it is plain
  shoe 2,soft,,soft           that its cells are ratings. An empty cell, or
  shoe 3,firm,medium,medium   `not seen`, is no rating.

  --scale LEVELS         the levels in order, lowest first: soft,medium,firm;
                         levels that nobody used are kept. Without it numbers are
                         measurements, and words are names without an order.
  --as KIND              text (the default) or json
  --help                 print this help
)";

}  // namespace

Parsed<CommandLine> parse_agree(const std::vector<std::string>& arguments) {
  Options parsed = options_of_all();
  const auto text = [] { return options::value<std::string>(); };
  parsed.known.add_options()("ratings", text())("scale", text())("as", text());
  if (Problem problem = parse_options("agree", arguments, parsed); !problem.message.empty()) {
    return problem;
  }
  if (parsed.given.count("help") != 0) {
    return CommandLine{PrintCommand{std::string(agree_help)}, {}};
  }
  AgreeCommand command;
  command.ratings = value_of(parsed, "ratings").value_or("");
  if (command.ratings.empty() || !parsed.operands.empty()) {
    return Problem{"agree needs a table of ratings", "write `heelrule agree --ratings FILE.csv`"};
  }
  if (const auto scale = value_of(parsed, "scale")) {
    const auto levels = parse_scale(*scale);
    if (!levels) {
      return levels.problem();
    }
    command.scale = *levels;
  }
  const std::string as = value_of(parsed, "as").value_or("text");
  if (as != "text" && as != "json") {
    return Problem{fmt::format("there is no report of kind `{}`", as), "write `text` or `json`"};
  }
  command.as = as == "json" ? ReportKind::json : ReportKind::text;
  return CommandLine{command, value_of(parsed, "rules-folder").value_or("")};
}

}  // namespace heelrule
