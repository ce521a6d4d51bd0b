#include "cli/command_line_size.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "cli/command_line_options.hpp"
#include "engine/quantity/calendar_date.hpp"

namespace heelrule {
namespace {

namespace options = boost::program_options;

constexpr std::string_view size_help = R"(usage: heelrule size RULES INSPECTION... [options]
       heelrule size --standing-left LENGTH --standing-right LENGTH [options]

From two feet to what to ask for in a shop: the inside length, the size in each
system, the width; whether socks are made for these feet; and for a child until
when a pair lasts and when to measure again. Safety questions come first: a yes
holds advice back. Several inspections of one child, on different days, give the
child's own rate of growth.

Measures, as 243mm or 9.6in, in place of an inspection; one that was taken again
is given again:
  --standing-left, --standing-right          length of the standing foot
  --seated-left, --seated-right              length of the foot without load
  --width-left, --width-right                width of the standing foot
  --seated-width-left, --seated-width-right  width of the foot without load
  --girth-left, --girth-right                around the ball of the standing foot
  --in-sock-left, --in-sock-right            length standing in the sock
  --inside-left, --inside-right              inside of the shoes worn now
  --age AGE              of a child: "5 years", "18 months"
  --date DATE            of the measuring: 2026-10-03
  --for WHOM             adult (the default), child (the default with --age) or
                         at-risk: the rule set everyday, child or at-risk-foot

With both:
  --sock RANGE           a marked range, "EU 39-42", "24-26 cm"; may be given
                         again, to choose from a rack
  --fibres BLEND         of the sock: "80 % cotton, 20 % polyester"
  --as KIND              text (the default) or json
  --language TAG         language of what the rule set says, such as es; may be
                         given again, first choice first
  --rules-folder FOLDER  where the rule sets that ship are
  --help                 print this help
)";

struct ForWhom {
  std::string_view name;
  std::string_view rules;
};

constexpr std::array<ForWhom, 3> whom{
    {{"adult", "everyday"}, {"child", "child"}, {"at-risk", "at-risk-foot"}}};

Options known_options() {
  Options all = options_of_all();
  const auto text = [] { return options::value<std::string>(); };
  const auto texts = [] { return options::value<std::vector<std::string>>(); };
  all.known.add_options()("as", text())("language", texts())("date", text())("for", text())(
      "sock", texts())("fibres", text());
  for (const MeasureOption& option : measure_options()) {
    all.known.add_options()(std::string(option.name).c_str(), texts());
  }
  return all;
}

std::vector<GivenMeasure> given_measures(const Options& parsed) {
  std::vector<GivenMeasure> given;
  for (const MeasureOption& option : measure_options()) {
    auto readings = values_of(parsed, std::string(option.name).c_str());
    if (!readings.empty()) {
      given.push_back({std::string(option.name), std::move(readings)});
    }
  }
  return given;
}

Parsed<std::string> rules_for(const Options& parsed, const std::vector<GivenMeasure>& measures) {
  const bool has_age = std::any_of(measures.begin(), measures.end(),
                                   [](const GivenMeasure& one) { return one.option == "age"; });
  const std::string name = value_of(parsed, "for").value_or(has_age ? "child" : "adult");
  const auto found =
      std::find_if(whom.begin(), whom.end(), [&](const ForWhom& one) { return one.name == name; });
  if (found == whom.end()) {
    return Problem{fmt::format("`{}` is nobody that shoes are sized for here", name),
                   "write `adult`, `child` or `at-risk`"};
  }
  return std::string(found->rules);
}

// Which rule set, and inspections or measures: one of them, and not both.
Problem take_source(const Options& parsed, SizeCommand& command) {
  command.measures = given_measures(parsed);
  const bool has_measures = !command.measures.empty();
  if (parsed.operands.size() > 1 && has_measures) {
    return {fmt::format("`--{}` does not go with an inspection", command.measures[0].option),
            "give measures, or inspections that hold them"};
  }
  if (parsed.operands.size() < 2 && !has_measures) {
    return {"size needs the length of the standing feet",
            "write `heelrule size RULES INSPECTION...`, or give `--standing-left` and "
            "`--standing-right`"};
  }
  if (!parsed.operands.empty()) {
    if (parsed.given.count("for") != 0) {
      return {fmt::format("`--for` and the rule set `{}` both say for whom it is",
                          parsed.operands.front()),
              "leave one of the two out"};
    }
    command.rules = parsed.operands.front();
    command.inspections.assign(parsed.operands.begin() + 1, parsed.operands.end());
    return {};
  }
  const auto rules = rules_for(parsed, command.measures);
  command.rules = rules ? *rules : "";
  return rules.problem();
}

Problem take_date(const Options& parsed, SizeCommand& command) {
  command.date = value_of(parsed, "date");
  if (command.date && !command.inspections.empty()) {
    return {"`--date` does not go with an inspection", "it has a date of its own"};
  }
  if (command.date && !find_date(*command.date)) {
    return {fmt::format("`{}` is no date", *command.date),
            "write year, month and day: `2026-10-03`"};
  }
  return {};
}

}  // namespace

Parsed<CommandLine> parse_size(const std::vector<std::string>& arguments) {
  Options parsed = known_options();
  if (Problem problem = parse_options("size", arguments, parsed); !problem.message.empty()) {
    return problem;
  }
  if (parsed.given.count("help") != 0) {
    return CommandLine{PrintCommand{std::string(size_help)}, {}};
  }
  SizeCommand command;
  if (Problem problem = take_source(parsed, command); !problem.message.empty()) {
    return problem;
  }
  if (Problem problem = take_date(parsed, command); !problem.message.empty()) {
    return problem;
  }
  const std::string as = value_of(parsed, "as").value_or("text");
  if (as != "text" && as != "json") {
    return Problem{fmt::format("there is no report of kind `{}`", as), "write `text` or `json`"};
  }
  command.as = as == "json" ? ReportKind::json : ReportKind::text;
  command.socks = values_of(parsed, "sock");
  command.fibres = value_of(parsed, "fibres");
  command.languages = values_of(parsed, "language");
  return CommandLine{command, value_of(parsed, "rules-folder").value_or("")};
}

}  // namespace heelrule
