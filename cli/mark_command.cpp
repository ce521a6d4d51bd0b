#include "cli/mark_command.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "cli/files.hpp"
#include "cli/load_program.hpp"
#include "cli/load_record.hpp"
#include "cli/output.hpp"
#include "cli/report_files.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/report/fallback_order.hpp"
#include "engine/report/mark_page.hpp"
#include "engine/report/mark_report.hpp"
#include "engine/report/mark_table.hpp"
#include "engine/report/verdict_words.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

class MarkRun {
 public:
  MarkRun(const MarkCommand& command, const Program& program)
      : command_(command), program_(program) {}

  ExitStatus run() {
    const MarkingRules marking = load_marking();
    const std::vector<Inspection> references = load_all(command_.references);
    const std::vector<Inspection> records = load_all(command_.records);
    if (status_ != ExitStatus::done) {
      return status_;
    }
    check_all(references, records);
    if (status_ != ExitStatus::done) {
      return status_;
    }
    const Reference reference = make_reference(program_, marking, references);
    std::vector<Mark> marks;
    marks.reserve(records.size());
    for (const Inspection& record : records) {
      marks.push_back(mark_record(program_, marking, reference, record));
    }
    const std::vector<std::string> languages = fallback_order(command_.languages, program_.rules);
    std::vector<MarkStory> stories;
    stories.reserve(records.size());
    for (std::size_t i = 0; i < records.size(); ++i) {
      stories.push_back({program_, marking, reference, records[i], marks[i], languages});
    }
    return report(stories);
  }

 private:
  void fail(ExitStatus status, const Problem& problem) {
    write_problem(problem);
    status_ = std::max(status_, status);
  }

  MarkingRules load_marking() {
    MarkingRules usual = usual_marking_rules(program_.rules);
    if (!command_.marking) {
      return usual;
    }
    const auto text = read_file(*command_.marking);
    if (!text) {
      fail(ExitStatus::input_missing, text.problem());
      return usual;
    }
    Sources sources;
    const std::uint32_t source =
        sources.add(*command_.marking, std::string(without_byte_order_mark(*text)));
    auto marking = load_marking_rules(sources, source, program_.rules);
    write_error(show(marking.diagnostics(), sources));
    if (!marking) {
      status_ = std::max(status_, ExitStatus::bad_data);
      return usual;
    }
    return *std::move(marking);
  }

  std::vector<Inspection> load_all(const std::vector<std::string>& paths) {
    std::vector<Inspection> all;
    for (const std::string& path : paths) {
      if (auto inspection = load_record(path, program_.rules, status_)) {
        all.push_back(*std::move(inspection));
      }
    }
    return all;
  }

  void check_all(const std::vector<Inspection>& references,
                 const std::vector<Inspection>& records) {
    const Inspection& first = references.front();
    for (std::size_t i = 0; i < references.size(); ++i) {
      check_one(first, references[i], command_.references[i]);
    }
    for (std::size_t i = 0; i < records.size(); ++i) {
      check_one(first, records[i], command_.records[i]);
    }
  }

  // Whether an inspection is of the rule set, the client and the shoe of the reference.
  void check_one(const Inspection& reference, const Inspection& other, const std::string& path) {
    if (const std::string_view rules = other_rules(program_, other); !rules.empty()) {
      fail(ExitStatus::bad_data,
           {fmt::format("`{}` was recorded for the rules `{}`, and is to be marked by `{}`", path,
                        rules, program_.rules.short_name()),
            "mark records by the rules that they were recorded for"});
    }
    check_part(reference.client, other.client, "client", path);
    check_part(reference.shoe_label, other.shoe_label, "shoe", path);
  }

  void check_part(const std::string& expected, const std::string& found, std::string_view part,
                  const std::string& path) {
    if (expected.empty() || found == expected) {
      return;
    }
    const std::string_view key = part == "shoe" ? "shoe: {label: …}" : "client: …";
    if (found.empty()) {
      fail(ExitStatus::bad_data,
           {fmt::format("`{}` does not say of which {} it is; the reference `{}` is of `{}`", path,
                        part, command_.references.front(), expected),
            fmt::format("write `{}` in its head, as the reference has it", key)});
    } else {
      fail(ExitStatus::bad_data,
           {fmt::format("`{}` is of the {} `{}`, and the reference `{}` of `{}`", path, part, found,
                        command_.references.front(), expected),
            "give the reference of the same client and shoe"});
    }
  }

  // A page for each record; of several one more about all of them.
  static std::vector<NamedReport> pages(const std::vector<MarkStory>& stories) {
    std::vector<NamedReport> all;
    std::vector<std::string> files;
    std::vector<std::string> taken;
    files.reserve(stories.size());
    for (std::size_t i = 0; i < stories.size(); ++i) {
      files.push_back(file_name(student_name(stories[i].record, i), "html", taken));
      all.push_back({files.back(), mark_page(stories[i], i)});
    }
    if (stories.size() > 1) {
      all.push_back({file_name("marks", "html", taken), mark_overview(stories, files)});
    }
    return all;
  }

  ExitStatus report(const std::vector<MarkStory>& stories) const {
    switch (command_.as) {
      case ReportKind::json:
        return write_report({"marks.json", mark_json(stories)}, command_.destination);
      case ReportKind::csv:
        return write_report({"marks.csv", mark_table(stories)}, command_.destination);
      case ReportKind::html: {
        const std::vector<NamedReport> made = pages(stories);
        return made.size() == 1 ? write_report(made.front(), command_.destination)
                                : write_reports(made, command_.destination);
      }
      case ReportKind::text:
        break;
    }
    const bool colour = colour_wanted() && !command_.destination.to;
    return write_report({"marks.txt", mark_text(stories, colour)}, command_.destination);
  }

  const MarkCommand& command_;
  const Program& program_;
  ExitStatus status_ = ExitStatus::done;
};

}  // namespace

ExitStatus run(const MarkCommand& command, const RuleFiles& files) {
  const CompiledRules compiled = compile_rules(command.rules, files);
  if (const auto refused = refuse_unsound(compiled)) {
    return *refused;
  }
  return MarkRun(command, *compiled.program).run();
}

}  // namespace heelrule
