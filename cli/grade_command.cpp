#include "cli/grade_command.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

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
    std::string reports;
    for (const std::string& path : command_.inspections) {
      add_report(path, reports);
    }
    if (command_.as == ReportKind::json) {
      reports = command_.inspections.size() == 1 ? reports : fmt::format("[\n{}]\n", reports);
    }
    worsen(write_output(reports));
    return status_;
  }

 private:
  void worsen(ExitStatus found) { status_ = std::max(status_, found); }

  void add_report(const std::string& path, std::string& reports) {
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
    const bool json = command_.as == ReportKind::json;
    if (!reports.empty()) {
      reports += json ? "" : "\n\n";
    }
    reports +=
        json ? json_report(program_, *inspection, verdict, command_.languages)
             : text_report(program_, *inspection, verdict, {colour_wanted(), command_.languages});
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
  if (!compiled.not_found.message.empty()) {
    write_problem(compiled.not_found);
    return ExitStatus::input_missing;
  }
  if (!compiled.program) {
    write_error(show(compiled.program.diagnostics(), compiled.sources));
    return ExitStatus::bad_data;
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
  return Grading(command, program, at_least).run();
}

}  // namespace heelrule
