// What was asked for on the command line.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "cli/report_files.hpp"
#include "cli/size_values.hpp"
#include "engine/quantity/parsed.hpp"
#include "engine/report/detail.hpp"
#include "engine/report/report_reader.hpp"

namespace heelrule {

/// `heelrule proof RULES…`
struct ProofCommand {
  std::vector<std::string> rules;
};

enum class ReportKind { text, json, csv, html };

enum class RecordKind { json_lines, csv };

/// How many records are graded in one go.
struct BulkOrder {
  RecordKind from = RecordKind::json_lines;
  Detail detail = Detail::full;
  bool stop_at_fault = false;
  std::size_t threads = 1;
};

/// `heelrule grade RULES INSPECTION…`
struct GradeCommand {
  std::string rules;
  std::vector<std::string> inspections;
  ReportKind as = ReportKind::text;
  std::vector<std::string> languages;
  std::optional<std::string> at_least;
  Destination destination;
  ReportReader reader = ReportReader::assessor;
  std::optional<std::string> mark;           ///< of the school, a file; of pages
  std::optional<std::string> template_file;  ///< of the school
  std::optional<std::string> earlier;        ///< a record to compare with
  bool together = false;                     ///< a page about all records too
  bool without_client = false;
  bool exactly = false;           ///< take readings as if they were free of doubt
  std::optional<BulkOrder> bulk;  ///< where `inspections` is one file of many records, or `-`
};

/// `heelrule size RULES INSPECTION…`, or measures in place of inspections
struct SizeCommand {
  std::string rules;
  std::vector<std::string> inspections;  ///< several: of one client, on different days
  std::vector<GivenMeasure> measures;    ///< where there are no inspections
  std::optional<std::string> date;       ///< of the measures
  std::vector<std::string> socks;        ///< marked ranges to choose from
  std::optional<std::string> fibres;
  ReportKind as = ReportKind::text;
  std::vector<std::string> languages;
};

/// `heelrule agree RULES RECORD…`, or `heelrule agree --ratings FILE`
struct AgreeCommand {
  std::string rules;
  std::vector<std::string> records;  ///< files and folders
  std::string ratings;               ///< in place of records: a table of ratings
  std::vector<std::string> scale;    ///< its levels, lowest first; none: names or numbers
  ReportKind as = ReportKind::text;
  std::vector<std::string> languages;
  std::optional<std::string> proposal;  ///< the file for proposed changes of the rule set
  Destination destination;
};

/// `heelrule mark RULES --reference REF RECORD…`
struct MarkCommand {
  std::string rules;
  std::vector<std::string> references;  ///< several: a panel
  std::vector<std::string> records;
  std::optional<std::string> marking;  ///< the trainer's file
  ReportKind as = ReportKind::text;
  std::vector<std::string> languages;
  Destination destination;
};

/// `heelrule pass SHEET`
struct PassCommand {
  std::string sheet;
  ReportKind as = ReportKind::text;
  Destination destination;
};

/// What a blank sheet is made for.
enum class SheetKind { yaml, paper, page };

/// `heelrule sheet RULES`
struct SheetCommand {
  std::string rules;
  SheetKind as = SheetKind::yaml;
  bool blind = false;                 ///< of a page: it does not show what the answers come to
  std::optional<std::string> record;  ///< of a page: the file with the answers that it begins with
  std::vector<std::string> languages;
};

/// `heelrule record RULES --to FILE`, or `heelrule record --amend FILE`
struct RecordCommand {
  std::string rules;  ///< of an amendment: may be empty, the record then says
  std::string file;
  bool amend = false;
  bool replace = false;  ///< what is there already may be replaced
  std::vector<std::string> languages;
};

/// Print a text and stop: help, or the version.
struct PrintCommand {
  std::string text;
};

/// A command with what all of them share.
struct CommandLine {
  std::variant<PrintCommand, ProofCommand, GradeCommand, SizeCommand, AgreeCommand, MarkCommand,
               PassCommand, SheetCommand, RecordCommand>
      command;
  std::string rules_folder;  ///< of the rule sets that ship; empty: where they are installed
};

/// Reads the arguments (without the program's name). Abbreviated options are not guessed at.
Parsed<CommandLine> parse_command_line(const std::vector<std::string>& arguments);

}  // namespace heelrule
