#include "cli/grade_pages.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

#include "cli/files.hpp"
#include "cli/load_program.hpp"
#include "cli/load_record.hpp"
#include "engine/doubt/doubt.hpp"
#include "engine/report/graded_page.hpp"
#include "engine/report/summary_page.hpp"
#include "engine/report/without_client.hpp"
#include "engine/scoring/grade.hpp"

namespace heelrule {
namespace {

class PageRun {
 public:
  PageRun(const GradeCommand& command, const Program& program,
          const std::vector<GradedRecord>& records)
      : command_(command), program_(program), records_(records) {
    wishes_.languages = command.languages;
    wishes_.reader = command.reader;
  }

  ExitStatus run() {
    take_file(command_.mark, school_mark, wishes_.mark);
    take_file(command_.template_file, school_template, wishes_.body);
    take_earlier();
    if (status_ == ExitStatus::done) {
      make_pages();
    }
    return status_ == ExitStatus::done ? write() : status_;
  }

 private:
  void fail(ExitStatus status, const Problem& problem) {
    write_problem(problem);
    status_ = std::max(status_, status);
  }

  // What a file that was named holds, made out by `read`.
  template <class Read, class Value>
  void take_file(const std::optional<std::string>& path, Read read, std::optional<Value>& value) {
    if (!path) {
      return;
    }
    const auto bytes = read_file(*path);
    if (!bytes) {
      return fail(ExitStatus::input_missing, bytes.problem());
    }
    const auto made = read(*bytes);
    if (!made) {
      const Problem& problem = made.problem();
      return fail(ExitStatus::bad_data,
                  {fmt::format("`{}`: {}", *path, problem.message), problem.hint});
    }
    value = *made;
  }

  void take_earlier() {
    if (!command_.earlier || records_.empty()) {
      return;
    }
    auto inspection = load_record(*command_.earlier, program_.rules, status_);
    if (!inspection) {
      return;
    }
    const Inspection& now = records_.front().inspection;
    if (!command_.without_client && inspection->client != now.client) {
      return fail(ExitStatus::bad_data,
                  {fmt::format("`{}` is of client `{}`, and this record of `{}`", *command_.earlier,
                               inspection->client, now.client),
                   "compare records of one client"});
    }
    if (!now.date.empty() && inspection->date >= now.date) {
      return fail(ExitStatus::bad_data,
                  {fmt::format("`{}` is of {}, and this record of {}", *command_.earlier,
                               inspection->date, now.date),
                   "give the later record first, and the earlier one with `--compare`"});
    }
    if (command_.without_client) {
      inspection = without_client(*std::move(inspection));
    }
    Verdict verdict = grade(program_, *inspection);
    std::optional<Doubt> doubt;
    if (!command_.exactly) {
      doubt = doubt_of(program_, *inspection, verdict);
    }
    earlier_ = GradedRecord{*std::move(inspection), std::move(verdict), std::move(doubt)};
  }

  std::string wanted_name(const Inspection& about) const {
    std::string name = about.client;
    for (const std::string_view part : {std::string_view(about.date), in_words(command_.reader)}) {
      name += fmt::format("{}{}", name.empty() || part.empty() ? "" : "-", part);
    }
    return name;
  }

  void make_pages() {
    for (const GradedRecord& record : records_) {
      const auto page = graded_page(program_, record, earlier_ ? &*earlier_ : nullptr, wishes_);
      if (!page) {
        const Problem& problem = page.problem();
        return fail(
            ExitStatus::bad_data,
            {fmt::format("`{}`: {}", *command_.template_file, problem.message), problem.hint});
      }
      pages_.push_back({file_name(wanted_name(record.inspection), "html", taken_), *page});
    }
    if (command_.together) {
      std::vector<SummaryEntry> entries;
      entries.reserve(records_.size());
      for (std::size_t i = 0; i < records_.size(); ++i) {
        entries.push_back({records_[i], pages_[i].name});
      }
      pages_.push_back(
          {file_name("summary", "html", taken_), summary_page(program_, entries, wishes_)});
    }
  }

  ExitStatus write() const {
    const bool is_one = command_.inspections.size() == 1 && !command_.together;
    if (is_one) {
      return pages_.empty() ? ExitStatus::done : write_report(pages_.front(), command_.destination);
    }
    return write_reports(pages_, command_.destination);
  }

  const GradeCommand& command_;
  const Program& program_;
  const std::vector<GradedRecord>& records_;
  PageWishes wishes_;
  std::optional<GradedRecord> earlier_;
  std::vector<std::string> taken_;
  std::vector<NamedReport> pages_;
  ExitStatus status_ = ExitStatus::done;
};

}  // namespace

ExitStatus write_pages(const GradeCommand& command, const Program& program,
                       const std::vector<GradedRecord>& records) {
  return PageRun(command, program, records).run();
}

}  // namespace heelrule
