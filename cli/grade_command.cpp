#include "cli/grade_command.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

#include "cli/bulk_command.hpp"
#include "cli/files.hpp"
#include "cli/load_program.hpp"
#include "cli/output.hpp"
#include "engine/quantity/nearest.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/report/json_report.hpp"
#include "engine/report/text_report.hpp"
#include "engine/scoring/grade.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

class Grading {
 public:
  Grading(const GradeCommand& command, const Program& program, std::optional<std::size_t> at_least)
      : command_(command), program_(program), at_least_(at_least) {}

  ExitStatus run() {
    std::vector<std::string> reports;
    for (const std::string& path : command_.inspections) {
      add_report(path, reports);
    }
    worsen(write_output(joined(std::move(reports))));
    return status_;
  }

 private:
  void worsen(ExitStatus found) { status_ = std::max(status_, found); }

  // Several reports in JSON are one array, also where all but one inspection could not be read.
  std::string joined(std::vector<std::string> reports) const {
    if (command_.as == ReportKind::text) {
      return fmt::format("{}", fmt::join(reports, "\n\n"));
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

  void add_report(const std::string& path, std::vector<std::string>& reports) {
    const auto text = read_file(path);
    if (!text) {
      write_problem(text.problem());
      worsen(ExitStatus::input_missing);
      return;
    }
    Sources sources;
    const std::uint32_t source = sources.add(path, std::string(without_byte_order_mark(*text)));
    const auto inspection = load_inspection(sources, source, program_.rules);
    write_error(show(inspection.diagnostics(), sources));
    if (!inspection) {
      worsen(ExitStatus::bad_data);
      return;
    }
    const Verdict verdict = grade(program_, *inspection);
    if (at_least_ && (!verdict.grade || verdict.lowest_grade > *at_least_)) {
      worsen(ExitStatus::answer_is_no);
    }
    reports.push_back(
        command_.as == ReportKind::json
            ? json_report(program_, *inspection, verdict, command_.languages)
            : text_report(program_, *inspection, verdict, {colour_wanted(), command_.languages}));
  }

  const GradeCommand& command_;
  const Program& program_;
  std::optional<std::size_t> at_least_;
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
