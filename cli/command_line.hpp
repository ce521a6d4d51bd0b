// What was asked for on the command line.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// `heelrule proof RULES…`
struct ProofCommand {
  std::vector<std::string> rules;
};

enum class ReportKind { text, json };

/// `heelrule grade RULES INSPECTION…`
struct GradeCommand {
  std::string rules;
  std::vector<std::string> inspections;
  ReportKind as = ReportKind::text;
  std::vector<std::string> languages;
  std::optional<std::string> at_least;
};

/// Print a text and stop: help, or the version.
struct PrintCommand {
  std::string text;
};

/// A command with what all of them share.
struct CommandLine {
  std::variant<PrintCommand, ProofCommand, GradeCommand> command;
  std::string rules_folder;  ///< of the rule sets that ship; empty: where they are installed
};

/// Reads the arguments (without the program's name). Abbreviated options are not guessed at.
Parsed<CommandLine> parse_command_line(const std::vector<std::string>& arguments);

}  // namespace heelrule
