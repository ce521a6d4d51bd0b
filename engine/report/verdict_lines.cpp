#include "engine/report/verdict_lines.hpp"

#include <optional>
#include <utility>

#include "engine/report/account.hpp"
#include "engine/report/finding_lines.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/kept_grades.hpp"
#include "engine/report/memo.hpp"
#include "engine/report/numerals.hpp"
#include "engine/report/padded_text.hpp"
#include "engine/report/said_lines.hpp"
#include "engine/report/short_findings.hpp"

namespace heelrule {

class VerdictLines::Writer {
 public:
  Writer(const Program& program, std::span<const std::string> languages, Detail detail)
      : program_(program),
        languages_(fallback_order(languages, program.rules)),
        safety_(program.rules.safety.size()),
        grades_(program, languages_, detail),
        said_(program, languages_, detail) {
    JsonWriter opening(JsonWriter::Layout::compact);
    opening.begin_object();
    write_format(opening, program, program.rules.title.in(languages_));
    opening_ = PaddedText(opening.take() + R"(,"inspection":{)");
    if (detail == Detail::full) {
      prepare_full();
    } else if (detail == Detail::failed) {
      short_findings_.emplace(program, languages_);
    }
  }

  void append(const Inspection& inspection, const Verdict& verdict, GrowingText& lines) {
    lines_ = &lines;
    numerals_.expect(verdict.score.points().value_or(0));
    put(opening_);
    if (full_) {
      append_full(inspection, verdict);
    } else {
      append_short(inspection, verdict);
    }
  }

 private:
  // What only full lines have.
  struct Full {
    FindingLines findings;
    std::vector<std::string> sections;  // up to the score
    std::string closing;
  };

  void prepare_full() {
    full_.emplace(Full{FindingLines(program_, languages_), {}, {}});
    for (const Section& section : program_.rules.sections) {
      JsonWriter head(JsonWriter::Layout::compact);
      head.begin_object();
      head.text("name", section.name.value).text("title", section.title.in(languages_));
      full_->sections.push_back(head.take() + R"(,"score":)");
    }
    JsonWriter closing(JsonWriter::Layout::compact);
    closing.begin_object();
    closing.texts("usual_cautions", usual_cautions(program_.rules, languages_)).end_object();
    full_->closing = "]," + closing.take().substr(1) + "\n";
  }

  void append_full(const Inspection& inspection, const Verdict& verdict) {
    put(R"("rules":)");
    lines_->put_json(inspection.rules);
    put(",");
    who_and_when(inspection);
    put(R"(,"note":)");
    lines_->put_json(inspection.note);
    put(R"(},"see_practitioner_first":)");
    put(std::string_view(verdict.refers() ? "true" : "false"));
    put(R"(,"safety":[)");
    safety(inspection, verdict);
    put(R"(],"referrals":[)");
    said_.append(verdict, verdict.referrals, SpokenKind::referral, *lines_);
    put(R"(],"grade":)");
    grades_.append(inspection, verdict, *lines_);
    put(R"(,"score":)");
    score(verdict.score);
    sections(verdict);
    put(R"(,"findings":[)");
    full_->findings.append(inspection, verdict, *lines_);
    put(R"(],"cautions":[)");
    said_.append(verdict, verdict.cautions, SpokenKind::caution, *lines_);
    put(R"(],"advice":[)");
    said_.append(verdict, verdict.advice, SpokenKind::advice, *lines_);
    put(R"(],"advice_held_back":[)");
    said_.append(verdict, verdict.held_advice, SpokenKind::advice, *lines_);
    put(R"(],"would_settle":[)");
    would_settle(inspection, verdict);
    put(full_->closing);
  }

  void append_short(const Inspection& inspection, const Verdict& verdict) {
    who_and_when(inspection);
    if (verdict.refers()) {
      put(R"(},"see_practitioner_first":true,"safety":[)");
      safety(inspection, verdict);
      put(R"(],"referrals":[)");
      said_.append(verdict, verdict.referrals, SpokenKind::referral, *lines_);
      put(R"(],"grade":)");
    } else {
      put(R"(},"see_practitioner_first":false,"safety":[],"referrals":[],"grade":)");
    }
    grades_.append(inspection, verdict, *lines_);
    put(R"(,"score":)");
    points(verdict.score);
    if (short_findings_) {
      put(R"(},"findings":[)");
      short_findings_->append(inspection, verdict, *lines_);
      put(R"(],"cautions":[)");
    } else {
      put(R"(},"cautions":[)");
    }
    said_.append(verdict, verdict.cautions, SpokenKind::caution, *lines_);
    put("]}\n");
  }

  template <class Text>
  void put(const Text& text) {
    lines_->put(text);
  }
  void put(double number) { lines_->put(numerals_.of(number)); }

  void who_and_when(const Inspection& inspection) {
    put(R"("date":)");
    lines_->put_json(inspection.date);
    put(R"(,"observer":)");
    lines_->put_json(inspection.observer);
    put(R"(,"client":)");
    lines_->put_json(inspection.client);
    put(R"(,"shoe":)");
    lines_->put_json(inspection.shoe_label);
    put(R"(,"marked":)");
    lines_->put_json(inspection.shoe_marked);
  }

  void safety(const Inspection& inspection, const Verdict& verdict) {
    const bool words_beside = !inspection.observations.empty() &&
                              inspection.observations.front().trait < program_.rules.safety.size();
    std::string_view comma;
    for (std::size_t i = 0; i < verdict.safety.size(); ++i) {
      const SafetyAnswer& answer = verdict.safety[i];
      if (!answer.yes && !full_) {
        continue;
      }
      put(comma);
      comma = ",";
      const auto make = [&] {
        const Account words = brief_account(program_, inspection, verdict, languages_);
        JsonWriter json(JsonWriter::Layout::compact);
        write_safety(json, program_, words.safety[i], answer);
        return json.take();
      };
      if (words_beside) {
        put(make());
      } else {
        double which = answer.yes ? 2 : answer.asked ? 1 : 0;
        for (const Side side : answer.sides) {
          which = which * 4 + static_cast<double>(side);
        }
        put(safety_[i].get(which, make));
      }
    }
  }

  // The score, up to its weights.
  void points(const Score& score) {
    put(R"({"points":)");
    if (const auto points = score.points()) {
      put(*points);
    } else {
      put("null");
    }
    put(R"(,"lowest":)");
    put(score.lowest_points());
    put(R"(,"highest":)");
    put(score.highest_points());
  }

  void score(const Score& score) {
    points(score);
    put(R"(,"weight_seen":)");
    put(score.weight / weight_step);
    put(R"(,"weight_open":)");
    put(score.open_weight / weight_step);
    put("}");
  }

  void sections(const Verdict& verdict) {
    std::string_view before = R"(,"sections":[)";
    for (std::size_t i = 0; i < full_->sections.size(); ++i) {
      put(before);
      before = "},";
      put(full_->sections[i]);
      score(verdict.sections[i]);
    }
    put(std::string_view(full_->sections.empty() ? R"(,"sections":[])" : "}]"));
  }

  void would_settle(const Inspection& inspection, const Verdict& verdict) {
    if (verdict.would_settle.empty()) {
      return;
    }
    std::string_view comma;
    for (const std::string& question :
         missing_questions(program_, inspection, verdict.would_settle, languages_)) {
      put(comma);
      comma = ",";
      lines_->put_json(question);
    }
  }

  const Program& program_;
  std::vector<std::string> languages_;
  PaddedText opening_;
  std::vector<Memo> safety_;
  KeptGrades grades_;
  SaidLines said_;
  std::optional<Full> full_;
  std::optional<ShortFindings> short_findings_;
  Numerals numerals_;
  GrowingText* lines_ = nullptr;
};

VerdictLines::VerdictLines(const Program& program, std::span<const std::string> languages,
                           Detail detail)
    : writer_(std::make_unique<Writer>(program, languages, detail)) {}
VerdictLines::~VerdictLines() = default;
VerdictLines::VerdictLines(VerdictLines&&) noexcept = default;
VerdictLines& VerdictLines::operator=(VerdictLines&&) noexcept = default;

void VerdictLines::append(const Inspection& inspection, const Verdict& verdict,
                          GrowingText& lines) {
  writer_->append(inspection, verdict, lines);
}

}  // namespace heelrule
