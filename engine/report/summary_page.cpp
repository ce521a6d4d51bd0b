#include "engine/report/summary_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/report/fill_template.hpp"
#include "engine/report/page_frame.hpp"
#include "engine/report/safety_parts.hpp"
#include "engine/report/verdict_words.hpp"

namespace heelrule {

std::string_view summary_template();

namespace {

constexpr std::size_t most_rules = 10;  // of those that failed most often

struct RuleTally {
  std::size_t rule = 0;
  std::size_t failed = 0;
  std::size_t seen = 0;
};

std::string count_words(std::size_t records) {
  return fmt::format("{} {}", records, records == 1 ? "record" : "records");
}

class Summary {
 public:
  Summary(const Program& program, const std::vector<SummaryEntry>& entries,
          std::vector<std::string> languages)
      : program_(program), entries_(entries), languages_(std::move(languages)) {}

  PageData data() {
    PageData data;
    data.words("title", program_.rules.title.in(languages_));
    data.words("rules", program_.rules.name);
    data.words("edition", program_.rules.edition);
    data.words("count", count_words(entries_.size()));
    add_referred(data);
    add_grades(data);
    add_rows(data);
    add_failed_most(data);
    return data;
  }

  std::string last() const { return last_part(usual_cautions(program_.rules, languages_)); }

 private:
  static std::string name_of(const Inspection& inspection, std::size_t place) {
    return inspection.client.empty() ? fmt::format("record {}", place + 1) : inspection.client;
  }

  void add_referred(PageData& data) const {
    bool any = false;
    for (std::size_t i = 0; i < entries_.size(); ++i) {
      const Inspection& inspection = entries_[i].record.inspection;
      const Verdict& verdict = entries_[i].record.verdict;
      if (!verdict.refers()) {
        continue;
      }
      any = true;
      const Account told = account(program_, inspection, verdict, languages_);
      PageData& row = data.add("referred");
      row.words("name", name_of(inspection, i));
      row.words("file", entries_[i].file);
      row.each("reasons", referral_sentences(told, verdict));
    }
    data.fact("any_referred", any);
  }

  void add_grades(PageData& data) const {
    for (std::size_t grade = 0; grade <= program_.rules.grades.size(); ++grade) {
      const bool is_none = grade == program_.rules.grades.size();
      const auto count =
          std::count_if(entries_.begin(), entries_.end(), [&](const SummaryEntry& entry) {
            const auto& got = entry.record.verdict.grade;
            return is_none ? !got : got == grade;
          });
      if (count > 0 || !is_none) {
        PageData& row = data.add("grades");
        row.words("name", is_none ? "no grade" : program_.rules.grades[grade].name.value);
        row.words("count", fmt::format("{}", count));
      }
    }
  }

  void add_rows(PageData& data) const {
    for (std::size_t i = 0; i < entries_.size(); ++i) {
      const Inspection& inspection = entries_[i].record.inspection;
      const Verdict& verdict = entries_[i].record.verdict;
      PageData& row = data.add("records");
      row.words("name", name_of(inspection, i));
      row.words("file", entries_[i].file);
      row.words("shoe", inspection.shoe_label);
      row.words("observer", inspection.observer);
      row.words("date", inspection.date);
      row.words("grade", grade_words(program_, verdict));
      row.fact("provisional", verdict.grade && !verdict.stands);
      row.words("points", verdict.score.points() ? points_and_reach(program_, verdict) : "");
      row.fact("refers", verdict.refers());
      for (const Finding& finding : verdict.findings) {
        if (finding.cap) {
          row.add("musts").words("words", finding_title(program_, finding, languages_));
        }
      }
    }
  }

  void add_failed_most(PageData& data) const {
    std::vector<RuleTally> tallies(program_.rules.rules.size());
    for (std::size_t rule = 0; rule < tallies.size(); ++rule) {
      tallies[rule].rule = rule;
    }
    for (const SummaryEntry& entry : entries_) {
      for (const Finding& finding : entry.record.verdict.findings) {
        tallies[finding.rule].seen += is_judged(finding.status) ? 1 : 0;
        tallies[finding.rule].failed += finding.status == Status::fail ? 1 : 0;
      }
    }
    std::erase_if(tallies, [](const RuleTally& tally) { return tally.failed == 0; });
    std::stable_sort(tallies.begin(), tallies.end(),
                     [](const RuleTally& a, const RuleTally& b) { return a.failed > b.failed; });
    data.fact("any_failed", !tallies.empty());
    for (std::size_t i = 0; i < tallies.size() && i < most_rules; ++i) {
      PageData& row = data.add("failed_most");
      row.words("title", rule_title(program_.rules.rules[tallies[i].rule], languages_));
      row.words("failed", fmt::format("{}", tallies[i].failed));
      row.words("seen", fmt::format("{}", tallies[i].seen));
    }
  }

  const Program& program_;
  const std::vector<SummaryEntry>& entries_;
  std::vector<std::string> languages_;
};

}  // namespace

std::string summary_page(const Program& program, const std::vector<SummaryEntry>& entries,
                         const PageWishes& wishes) {
  const std::vector<std::string> languages = fallback_order(wishes.languages, program.rules);
  Summary summary(program, entries, languages);
  PageFrame frame;
  frame.running_left = program.rules.title.in(languages);
  frame.running_right = count_words(entries.size());
  frame.title = fmt::format("{} · {}", frame.running_left, frame.running_right);
  frame.kind = "summary";
  frame.body = *fill_template(summary_template(), summary.data());
  frame.last = summary.last();
  frame.mark = wishes.mark;
  return framed_page(frame);
}

}  // namespace heelrule
