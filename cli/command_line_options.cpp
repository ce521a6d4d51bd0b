#include "cli/command_line_options.hpp"

#include <fmt/format.h>

#include <array>
#include <utility>

#include "engine/quantity/nearest.hpp"

namespace heelrule {
namespace {

namespace options = boost::program_options;

std::string help_hint(std::string_view command) {
  return fmt::format("write `heelrule {} --help` for all that it understands", command);
}

Problem needs_a_value(std::string_view option, std::string_view command) {
  return {fmt::format("`{}` needs a value", option), help_hint(command)};
}

}  // namespace

// The help texts are written by hand, so the library is told names and kinds alone.
Options options_of_all() {
  Options all;
  all.known.add_options()("help,h", "")("rules-folder", options::value<std::string>());
  return all;
}

// The library guesses at abbreviations unless told not to, and takes the next option for the value
// of one that has none.
Problem parse_options(std::string_view command, const std::vector<std::string>& arguments,
                      Options& result) {
  namespace style = options::command_line_style;
  const int exact = style::allow_long | style::allow_short | style::short_allow_next |
                    style::long_allow_next | style::long_allow_adjacent |
                    style::allow_dash_for_short;
  options::options_description all;
  all.add(result.known).add_options()("operands", options::value<std::vector<std::string>>());
  options::positional_options_description positional;
  positional.add("operands", -1);
  try {
    const auto written = options::command_line_parser(arguments)
                             .options(all)
                             .positional(positional)
                             .style(exact)
                             .run();
    for (const auto& option : written.options) {
      if (option.position_key < 0 && !option.value.empty() && option.value[0].starts_with("--")) {
        return needs_a_value(option.original_tokens.front(), command);
      }
    }
    options::store(written, result.given);
  } catch (const options::unknown_option& unknown) {
    const std::string written = unknown.get_option_name();
    Nearest nearest(written);
    for (const auto& option : result.known.options()) {
      nearest.offer("--" + option->long_name());
    }
    return {fmt::format("there is no option `{}`", written),
            nearest.found() ? nearest.question() : help_hint(command)};
  } catch (const options::multiple_occurrences& repeated) {
    return {fmt::format("`{}` was given more than once", repeated.get_option_name()),
            "give it once"};
  } catch (const options::invalid_command_line_syntax& syntax) {
    if (syntax.kind() != options::invalid_syntax::extra_parameter) {
      return needs_a_value(syntax.get_option_name(), command);
    }
    return {fmt::format("`{}` takes no value", syntax.get_option_name()), help_hint(command)};
  } catch (const options::error& problem) {
    return {problem.what(), help_hint(command)};
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

std::vector<std::string> values_of(const Options& parsed, const char* name) {
  return parsed.given.count(name) == 0 ? std::vector<std::string>{}
                                       : parsed.given[name].as<std::vector<std::string>>();
}

Destination destination_in(const Options& parsed) {
  return {value_of(parsed, "to"),
          parsed.given.count("replace") != 0 ? Existing::replace : Existing::keep};
}

std::optional<ReportKind> find_report_kind(std::string_view name) {
  constexpr std::array<std::pair<std::string_view, ReportKind>, 4> kinds{
      {{"text", ReportKind::text},
       {"json", ReportKind::json},
       {"csv", ReportKind::csv},
       {"html", ReportKind::html}}};
  for (const auto& [word, kind] : kinds) {
    if (word == name) {
      return kind;
    }
  }
  return std::nullopt;
}

}  // namespace heelrule
