// Options as they stand on the command line, before a command gives them a meaning.
#pragma once

#include <boost/program_options.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/command_line.hpp"
#include "cli/report_files.hpp"
#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// The options that a command knows, those that were given, and the other arguments.
struct Options {
  boost::program_options::options_description known;
  boost::program_options::variables_map given;
  std::vector<std::string> operands;
};

/// Knows the options of every command: `--help` and `--rules-folder`.
Options options_of_all();

/// Reads the arguments of a command into `result`. Abbreviations are not guessed at, and an option
/// that needs a value does not take the next option for it.
Problem parse_options(std::string_view command, const std::vector<std::string>& arguments,
                      Options& result);

/// The text that was given for an option, if it was given.
std::optional<std::string> value_of(const Options& parsed, const char* name);

/// The texts of an option that may be given several times.
std::vector<std::string> values_of(const Options& parsed, const char* name);

/// Where `--to` and `--replace` say that a report goes.
Destination destination_in(const Options& parsed);

/// The kind of report by its name: `text`, `json`, `csv`, `html`.
std::optional<ReportKind> find_report_kind(std::string_view name);

}  // namespace heelrule
