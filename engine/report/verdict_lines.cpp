#include "engine/report/verdict_lines.hpp"

#include <string_view>
#include <vector>

#include "engine/report/account.hpp"
#include "engine/report/finding_lines.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/kept_grades.hpp"
#include "engine/report/line_parts.hpp"
#include "engine/report/said_lines.hpp"

namespace heelrule {

class VerdictLines::Writer {
 public:
  Writer(const Program& program, std::span<const std::string> languages)
      : program_(program),
        languages_(fallback_order(languages, program.rules)),
        parts_(program, languages_),
        grades_(program, languages_, Detail::full),
        findings_(program, languages_),
        said_(program, languages_) {
    for (const Section& section : program_.rules.sections) {
      JsonWriter head(JsonWriter::Layout::compact);
      head.begin_object();
      head.text("name", section.name.value).text("title", section.title.in(languages_));
      sections_.push_back(head.take() + R"(,"score":)");
    }
    JsonWriter closing(JsonWriter::Layout::compact);
    closing.begin_object();
    closing.texts("usual_cautions", usual_cautions(program_.rules, languages_)).end_object();
    closing_ = "]," + closing.take().substr(1) + "\n";
  }

  void append(const Inspection& inspection, const Verdict& verdict, GrowingText& line) {
    parts_.expect(verdict.score);
    parts_.open(line);
    line.put(R"("rules":)");
    line.put_json(inspection.rules);
    line.put(",");
    LineParts::who_and_when(inspection, line);
    line.put(R"(,"note":)");
    line.put_json(inspection.note);
    line.put(R"(},"see_practitioner_first":)");
    line.put(std::string_view(verdict.refers() ? "true" : "false"));
    line.put(R"(,"safety":[)");
    parts_.safety(inspection, verdict, Detail::full, line);
    line.put(R"(],"referrals":[)");
    said_.append(verdict, verdict.referrals, SpokenKind::referral, line);
    line.put(R"(],"grade":)");
    grades_.append(inspection, verdict, line);
    line.put(R"(,"score":)");
    append_score(verdict.score, line);
    append_sections(verdict, line);
    line.put(R"(,"findings":[)");
    findings_.append(inspection, verdict, line);
    line.put(R"(],"cautions":[)");
    said_.append(verdict, verdict.cautions, SpokenKind::caution, line);
    line.put(R"(],"advice":[)");
    said_.append(verdict, verdict.advice, SpokenKind::advice, line);
    line.put(R"(],"advice_held_back":[)");
    said_.append(verdict, verdict.held_advice, SpokenKind::advice, line);
    line.put(R"(],"would_settle":[)");
    append_would_settle(inspection, verdict, line);
    line.put(closing_);
  }

 private:
  void append_score(const Score& score, GrowingText& line) {
    parts_.points(score, line);
    line.put(R"(,"weight_seen":)");
    parts_.number(score.weight / weight_step, line);
    line.put(R"(,"weight_open":)");
    parts_.number(score.open_weight / weight_step, line);
    line.put("}");
  }

  void append_sections(const Verdict& verdict, GrowingText& line) {
    std::string_view before = R"(,"sections":[)";
    for (std::size_t i = 0; i < sections_.size(); ++i) {
      line.put(before);
      before = "},";
      line.put(sections_[i]);
      append_score(verdict.sections[i], line);
    }
    line.put(std::string_view(sections_.empty() ? R"(,"sections":[])" : "}]"));
  }

  void append_would_settle(const Inspection& inspection, const Verdict& verdict,
                           GrowingText& line) const {
    if (verdict.would_settle.empty()) {
      return;
    }
    std::string_view comma;
    for (const std::string& question :
         missing_questions(program_, inspection, verdict.would_settle, languages_)) {
      line.put(comma);
      comma = ",";
      line.put_json(question);
    }
  }

  const Program& program_;
  std::vector<std::string> languages_;
  LineParts parts_;
  KeptGrades grades_;
  FindingLines findings_;
  SaidLines said_;
  std::vector<std::string> sections_;  // up to the score
  std::string closing_;
};

VerdictLines::VerdictLines(const Program& program, std::span<const std::string> languages)
    : writer_(std::make_unique<Writer>(program, languages)) {}
VerdictLines::~VerdictLines() = default;
VerdictLines::VerdictLines(VerdictLines&&) noexcept = default;
VerdictLines& VerdictLines::operator=(VerdictLines&&) noexcept = default;

void VerdictLines::append(const Inspection& inspection, const Verdict& verdict,
                          GrowingText& lines) {
  writer_->append(inspection, verdict, lines);
}

}  // namespace heelrule
