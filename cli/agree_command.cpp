#include "cli/agree_command.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "cli/class_records.hpp"
#include "cli/files.hpp"
#include "cli/load_program.hpp"
#include "cli/output.hpp"
#include "cli/report_files.hpp"
#include "engine/agreement/table_agreement.hpp"
#include "engine/reading/read_ratings.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/report/class_page.hpp"
#include "engine/report/class_report.hpp"
#include "engine/report/fallback_order.hpp"
#include "engine/report/ratings_page.hpp"
#include "engine/report/ratings_report.hpp"
#include "engine/report/rule_proposal.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

NamedReport ratings_report(const AgreeCommand& command, const RatingTable& table,
                           const TableAgreement& agreement) {
  switch (command.as) {
    case ReportKind::json:
      return {"agreement.json", ratings_json(table, agreement)};
    case ReportKind::html:
      return {"agreement.html", ratings_page(table, agreement)};
    case ReportKind::text:
    case ReportKind::csv:
      break;
  }
  const bool colour = colour_wanted() && !command.destination.to;
  return {"agreement.txt", ratings_text(table, agreement, colour)};
}

ExitStatus report_ratings(const AgreeCommand& command) {
  const auto text = read_file(command.ratings);
  if (!text) {
    write_problem(text.problem());
    return ExitStatus::input_missing;
  }
  Sources sources;
  const std::uint32_t source =
      sources.add(command.ratings, std::string(without_byte_order_mark(*text)));
  const auto table = read_ratings(sources, source, command.scale);
  write_error(show(table.diagnostics(), sources));
  if (!table) {
    return ExitStatus::bad_data;
  }
  const TableAgreement agreement = table_agreement(scaled_ratings(*table));
  return write_report(ratings_report(command, *table, agreement), command.destination);
}

Problem too_few(const ClassTable& table) {
  if (table.observers().size() < 2) {
    return {"there are records of one student alone, and nobody to agree with",
            "give the records of at least two students"};
  }
  return {};
}

// A rule set that is named by its path is found again by its name alone, from its own folder.
Parsed<std::string> base_name(const std::string& rules, const std::string& proposal) {
  const std::size_t slash = rules.rfind('/');
  const std::string_view file =
      std::string_view(rules).substr(slash == std::string::npos ? 0 : slash + 1);
  if (!file.ends_with(".yaml")) {
    return rules;
  }
  const std::string folder = slash == std::string::npos ? "." : rules.substr(0, slash);
  const std::size_t end = proposal.rfind('/');
  const std::string beside = end == std::string::npos ? "." : proposal.substr(0, end);
  if (real_path(folder) != real_path(beside)) {
    return Problem{
        fmt::format("`{}` is not in the folder of `{}`, on which it builds", proposal, rules),
        fmt::format("write it to `{}`", folder)};
  }
  return std::string(file.substr(0, file.size() - 5));
}

ExitStatus write_proposal(const AgreeCommand& command, const ClassStory& story) {
  const auto base = base_name(command.rules, *command.proposal);
  if (!base) {
    write_problem(base.problem());
    return ExitStatus::usage;
  }
  return write_report({"proposal.yaml", rule_proposal(story, *base)},
                      {command.proposal, command.destination.existing});
}

NamedReport class_report(const AgreeCommand& command, const ClassStory& story) {
  switch (command.as) {
    case ReportKind::json:
      return {"class.json", class_json(story)};
    case ReportKind::html:
      return {"class.html", class_page(story)};
    case ReportKind::text:
    case ReportKind::csv:
      break;
  }
  return {"class.txt", class_text(story, colour_wanted() && !command.destination.to)};
}

// A faulty record is left out, and the report says so. Of a file that was lost nobody knows how
// much of the class it held, and figures from part of a class would be taken for those of the
// whole.
ExitStatus report_class(const AgreeCommand& command, const Program& program) {
  ClassRecords read = class_records(program, command.records);
  if (!read.is_whole) {
    return read.status;
  }
  const ClassTable table(std::move(read.records));
  if (const Problem problem = too_few(table); !problem.message.empty()) {
    write_problem(problem);
    return ExitStatus::bad_data;
  }
  const ClassAgreement agreement = class_agreement(program, table);
  const ClassStory story{program, table, agreement,
                         fallback_order(command.languages, program.rules), read.left_out};
  if (command.proposal) {
    const ExitStatus wrote = write_proposal(command, story);
    if (wrote != ExitStatus::done) {
      return wrote;
    }
  }
  return std::max(read.status, write_report(class_report(command, story), command.destination));
}

}  // namespace

ExitStatus run(const AgreeCommand& command, const RuleFiles& files) {
  if (!command.ratings.empty()) {
    return report_ratings(command);
  }
  const CompiledRules compiled = compile_rules(command.rules, files);
  if (const auto refused = refuse_unsound(compiled)) {
    return *refused;
  }
  return report_class(command, *compiled.program);
}

}  // namespace heelrule
