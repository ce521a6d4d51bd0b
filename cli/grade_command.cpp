#include "cli/grade_command.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

#include "cli/bulk_command.hpp"
#include "cli/grade_pages.hpp"
#include "cli/load_program.hpp"
#include "cli/load_record.hpp"
#include "cli/output.hpp"
#include "engine/doubt/doubt.hpp"
#include "engine/quantity/nearest.hpp"
#include "engine/report/finding_table.hpp"
#include "engine/report/json_report.hpp"
#include "engine/report/text_report.hpp"
#include "engine/report/without_client.hpp"
#include "engine/scoring/grade.hpp"

namespace heelrule {
namespace {

class Grading {
 public:
  Grading(const GradeCommand& command, const Program& program, std::optional<std::size_t> at_least)
      : command_(command), program_(program), at_least_(at_least) {}

  ExitStatus run() {
    for (const std::string& path : command_.inspections) {
      take(path);
    }
    worsen(write());
    return status_;
  }

 private:
  void worsen(ExitStatus found) { status_ = std::max(status_, found); }

  void take(const std::string& path) {
    auto inspection = load_record(path, program_.rules, status_);
    if (!inspection) {
      return;
    }
    if (command_.without_client) {
      inspection = without_client(*std::move(inspection));
    }
    Verdict verdict = grade(program_, *inspection);
    if (at_least_ && (!verdict.grade || verdict.lowest_grade > *at_least_)) {
      worsen(ExitStatus::answer_is_no);
    }
    std::optional<Doubt> doubt;
    if (!command_.exactly && command_.as != ReportKind::csv) {
      doubt = doubt_of(program_, *inspection, verdict);
    }
    records_.push_back({*std::move(inspection), std::move(verdict), std::move(doubt)});
  }

  ExitStatus write() const {
    switch (command_.as) {
      case ReportKind::text:
        return write_report({"report.txt", text()}, command_.destination);
      case ReportKind::json:
        return write_report({"report.json", json()}, command_.destination);
      case ReportKind::csv:
        return write_report({"report.csv", table()}, command_.destination);
      case ReportKind::html:
        return write_pages(command_, program_, records_);
    }
    return ExitStatus::done;
  }

  std::string text() const {
    const bool colour = colour_wanted() && !command_.destination.to;
    std::vector<std::string> reports;
    reports.reserve(records_.size());
    for (const GradedRecord& record : records_) {
      reports.push_back(text_report(program_, record.inspection, record.verdict,
                                    {colour, command_.languages}, record.known_doubt()));
    }
    return fmt::format("{}", fmt::join(reports, "\n\n"));
  }

  // Several reports in JSON are one array, also where all but one inspection could not be read.
  std::string json() const {
    std::vector<std::string> reports;
    reports.reserve(records_.size());
    for (const GradedRecord& record : records_) {
      reports.push_back(json_report(program_, record.inspection, record.verdict, command_.languages,
                                    record.known_doubt()));
    }
    if (command_.inspections.size() == 1) {
      return reports.empty() ? std::string{} : reports.front();
    }
    if (reports.empty()) {
      return "[]\n";
    }
    for (std::string& report : reports) {
      report.pop_back();
    }
    return fmt::format("[\n{}\n]\n", fmt::join(reports, ",\n"));
  }

  std::string table() const {
    std::string rows = finding_table_header();
    for (const GradedRecord& record : records_) {
      rows += finding_table(program_, record.inspection, record.verdict, command_.languages);
    }
    return rows;
  }

  const GradeCommand& command_;
  const Program& program_;
  std::optional<std::size_t> at_least_;
  std::vector<GradedRecord> records_;
  ExitStatus status_ = ExitStatus::done;
};

Problem no_grade(const std::string& name, const RuleSet& rules) {
  Nearest nearest(name);
  std::vector<std::string_view> names;
  for (const Grade& grade : rules.grades) {
    nearest.offer(grade.name.value);
    names.push_back(grade.name.value);
  }
  return {fmt::format("`{}` has no grade `{}`", rules.name, name),
          nearest.found() ? nearest.question()
                          : fmt::format("its grades are `{}`", fmt::join(names, "`, `"))};
}

}  // namespace

ExitStatus run(const GradeCommand& command, const RuleFiles& files) {
  const CompiledRules compiled = compile_rules(command.rules, files);
  if (const auto refused = refuse_unsound(compiled)) {
    return *refused;
  }
  const Program& program = *compiled.program;
  std::optional<std::size_t> at_least;
  if (command.at_least) {
    at_least = program.rules.find_grade(*command.at_least);
    if (!at_least) {
      write_problem(no_grade(*command.at_least, program.rules));
      return ExitStatus::usage;
    }
  }
  return command.bulk ? run(*command.bulk, command, program, at_least)
                      : Grading(command, program, at_least).run();
}

}  // namespace heelrule
