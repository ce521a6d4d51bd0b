#include "cli/size_command.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <vector>

#include "cli/load_program.hpp"
#include "cli/load_record.hpp"
#include "cli/output.hpp"
#include "engine/fitting/fitting.hpp"
#include "engine/fitting/visit_of_record.hpp"
#include "engine/quantity/calendar_date.hpp"
#include "engine/report/fitting_json.hpp"
#include "engine/report/fitting_text.hpp"
#include "engine/scoring/grade.hpp"

namespace heelrule {
namespace {

// An inspection, and what it is called in messages.
struct Record {
  std::string name;
  Inspection inspection;
};

class Sizing {
 public:
  Sizing(const SizeCommand& command, const Program& program)
      : command_(command), program_(program) {}

  ExitStatus run() {
    if (command_.inspections.empty()) {
      take_values();
    }
    for (const std::string& path : command_.inspections) {
      take_file(path);
    }
    if (status_ == ExitStatus::done) {
      put_in_order();
    }
    if (status_ == ExitStatus::done) {
      print();
    }
    return status_;
  }

 private:
  void fail(ExitStatus status, const Problem& problem) {
    write_problem(problem);
    status_ = std::max(status_, status);
  }

  void take_values() {
    auto inspection = inspection_of(command_.measures, command_.date.value_or(""), program_.rules);
    if (!inspection) {
      return fail(ExitStatus::usage, inspection.problem());
    }
    records_.push_back({"", *inspection});
  }

  void take_file(const std::string& path) {
    auto inspection = load_record(path, program_.rules, status_);
    if (!inspection) {
      return;
    }
    records_.push_back({path, *std::move(inspection)});
  }

  // Several records are the history of one person's feet.
  void put_in_order() {
    if (records_.size() < 2) {
      return;
    }
    std::stable_sort(records_.begin(), records_.end(), [](const Record& a, const Record& b) {
      return a.inspection.date < b.inspection.date;
    });
    for (std::size_t i = 0; i < records_.size(); ++i) {
      const Inspection& one = records_[i].inspection;
      const Record& other = records_[i == 0 ? 1 : i - 1];
      if (one.date.empty()) {
        return fail(ExitStatus::bad_data,
                    {fmt::format("`{}` has no date", records_[i].name),
                     "several records are put in order by their dates: give it one"});
      }
      if (one.client != other.inspection.client) {
        return fail(ExitStatus::bad_data,
                    {fmt::format("`{}` is of client `{}`, and `{}` of `{}`", other.name,
                                 other.inspection.client, records_[i].name, one.client),
                     "give records of one client at a time"});
      }
      if (one.date == other.inspection.date) {
        return fail(ExitStatus::bad_data,
                    {fmt::format("`{}` and `{}` have the same date", other.name, records_[i].name),
                     "write repeated readings of one day as a list in one record"});
      }
    }
  }

  void print() {
    const auto window = toe_window(program_.rules);
    if (!window) {
      return fail(ExitStatus::bad_data, window.problem());
    }
    std::vector<Visit> visits;
    for (const Record& record : records_) {
      const auto visit = visit_of_record(program_.rules, record.inspection);
      if (!visit) {
        const Problem& problem = visit.problem();
        return fail(
            record.name.empty() ? ExitStatus::usage : ExitStatus::bad_data,
            {record.name.empty() ? problem.message
                                 : fmt::format("{}: {}", record.name, problem.message),
             record.name.empty() ? "give `--standing-left` and `--standing-right`" : problem.hint});
      }
      visits.push_back(*visit);
    }
    add_socks(visits.back());
    if (status_ != ExitStatus::done) {
      return;
    }
    const Inspection& latest = records_.back().inspection;
    const Verdict verdict = grade(program_, latest);
    const Fitting found = fitting(visits, *window, is_for_children(program_.rules));
    status_ = write_output(command_.as == ReportKind::json
                               ? fitting_json(program_, latest, verdict, found, command_.languages)
                               : fitting_text(program_, latest, verdict, found,
                                              {colour_wanted(), command_.languages}));
  }

  void add_socks(Visit& visit) {
    for (const std::string& text : command_.socks) {
      const auto range = parse_sock_range(text);
      if (!range) {
        return fail(ExitStatus::usage,
                    {fmt::format("`--sock`: {}", range.problem().message), range.problem().hint});
      }
      visit.socks.push_back(*range);
    }
    if (command_.fibres) {
      const auto fibres = parse_fibre_content(*command_.fibres);
      if (!fibres) {
        return fail(ExitStatus::usage, {fmt::format("`--fibres`: {}", fibres.problem().message),
                                        fibres.problem().hint});
      }
      visit.fibres = *fibres;
    }
  }

  const SizeCommand& command_;
  const Program& program_;
  std::vector<Record> records_;
  ExitStatus status_ = ExitStatus::done;
};

}  // namespace

ExitStatus run(const SizeCommand& command, const RuleFiles& files) {
  const CompiledRules compiled = compile_rules(command.rules, files);
  if (const auto refused = refuse_unsound(compiled)) {
    return *refused;
  }
  return Sizing(command, *compiled.program).run();
}

}  // namespace heelrule
