#include "engine/report/verdict_lines.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/quantity/decimal.hpp"
#include "engine/report/account.hpp"
#include "engine/report/finding_lines.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/memo.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {

class VerdictLines::Writer {
 public:
  Writer(const Program& program, std::span<const std::string> languages, Detail detail)
      : program_(program),
        languages_(fallback_order(languages, program.rules)),
        detail_(detail),
        findings_(program, languages_),
        safety_(program.rules.safety.size()) {
    JsonWriter opening(JsonWriter::Layout::compact);
    opening.begin_object();
    write_format(opening, program, program.rules.title.in(languages_));
    opening_ = opening.take() + R"(,"inspection":{"rules":)";
    for (const Section& section : program.rules.sections) {
      JsonWriter head(JsonWriter::Layout::compact);
      head.begin_object();
      head.text("name", section.name.value).text("title", section.title.in(languages_));
      sections_.push_back(head.take() + R"(,"score":)");
    }
    JsonWriter closing(JsonWriter::Layout::compact);
    closing.begin_object();
    closing.texts("usual_cautions", usual_cautions(program.rules, languages_)).end_object();
    closing_ = closing.take().substr(1) + "\n";
  }

  void append(const Inspection& inspection, const Verdict& verdict, std::string& line) {
    line_ = &line;
    findings_.begin(inspection);
    about(inspection);
    put(verdict.refers() ? R"("see_practitioner_first":true,"safety":[)"
                         : R"("see_practitioner_first":false,"safety":[)");
    safety(inspection, verdict);
    said(R"(],"referrals":[)", verdict, verdict.referrals, SpokenKind::referral);
    put(R"(],"grade":)");
    grade(inspection, verdict);
    put(R"(,"score":)");
    score(verdict.score);
    if (detail_ == Detail::full) {
      sections(verdict);
    }
    if (detail_ != Detail::brief) {
      put(R"(,"findings":[)");
      findings(verdict);
      put("]");
    }
    said(R"(,"cautions":[)", verdict, verdict.cautions, SpokenKind::caution);
    if (detail_ == Detail::brief) {
      put("]}\n");
      return;
    }
    said(R"(],"advice":[)", verdict, verdict.advice, SpokenKind::advice);
    said(R"(],"advice_held_back":[)", verdict, verdict.held_advice, SpokenKind::advice);
    put(R"(],"would_settle":[)");
    would_settle(inspection, verdict);
    put("]");
    if (detail_ == Detail::full) {
      put(",");
      put(closing_);
    } else {
      put("}\n");
    }
  }

 private:
  static constexpr unsigned grade_place_bits = 10;

  // What the words about a grade depend on.
  struct GradeCase {
    std::optional<std::size_t> grade;
    std::optional<std::size_t> uncapped;
    std::size_t lowest = 0;
    std::size_t highest = 0;
    bool stands = false;
    bool is_open = false;
    std::vector<std::size_t> musts;  // findings that cap it

    bool operator==(const GradeCase&) const = default;
  };

  struct GradeWords {
    GradeCase known;
    std::string words;
  };

  void put(std::string_view text) { line_->append(text); }
  void put(double number) {
    put(numerals_.get(number, [&] { return shortest(number); }));
  }

  void about(const Inspection& inspection) {
    put(opening_);
    append_json_text(*line_, inspection.rules);
    const std::array<std::pair<std::string_view, const std::string*>, 6> fields{
        {{R"(,"date":)", &inspection.date},
         {R"(,"observer":)", &inspection.observer},
         {R"(,"client":)", &inspection.client},
         {R"(,"shoe":)", &inspection.shoe_label},
         {R"(,"marked":)", &inspection.shoe_marked},
         {R"(,"note":)", &inspection.note}}};
    for (const auto& [key, text] : fields) {
      put(key);
      append_json_text(*line_, *text);
    }
    put("},");
  }

  void safety(const Inspection& inspection, const Verdict& verdict) {
    const bool words_beside = !inspection.observations.empty() &&
                              inspection.observations.front().trait < program_.rules.safety.size();
    std::string_view comma;
    for (std::size_t i = 0; i < verdict.safety.size(); ++i) {
      const SafetyAnswer& answer = verdict.safety[i];
      if (!answer.yes && detail_ != Detail::full) {
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

  static std::size_t place_of(const GradeCase& known) {
    std::uint64_t mixed = (known.stands ? 2 : 0) + (known.is_open ? 1 : 0);
    const auto mix = [&](std::size_t part) { mixed = (mixed ^ part) * 0x9E3779B97F4A7C15; };
    for (const std::size_t part :
         {known.grade.value_or(0), known.uncapped.value_or(0), known.lowest, known.highest}) {
      mix(part);
    }
    for (const std::size_t must : known.musts) {
      mix(must);
    }
    return mixed >> (64U - grade_place_bits);
  }

  void know(const Verdict& verdict) {
    case_.grade = verdict.grade;
    case_.uncapped = verdict.uncapped;
    case_.lowest = verdict.lowest_grade;
    case_.highest = verdict.highest_grade;
    case_.stands = verdict.stands;
    case_.is_open = verdict.score.open_weight > 0;
    case_.musts.clear();
    for (std::size_t i = 0; i < verdict.findings.size(); ++i) {
      if (verdict.findings[i].cap) {
        case_.musts.push_back(i);
      }
    }
  }

  void grade(const Inspection& inspection, const Verdict& verdict) {
    const auto make = [&] {
      const Account words = brief_account(program_, inspection, verdict, languages_);
      JsonWriter json(JsonWriter::Layout::compact);
      write_grade(json, program_, words, verdict);
      return json.take();
    };
    know(verdict);
    GradeWords& kept = grades_[place_of(case_)];
    if (kept.words.empty() || !(kept.known == case_)) {
      kept = {case_, make()};
    }
    put(kept.words);
  }

  void score(const Score& score) {
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
    put(R"(,"weight_seen":)");
    put(score.weight / weight_step);
    put(R"(,"weight_open":)");
    put(score.open_weight / weight_step);
    put("}");
  }

  void sections(const Verdict& verdict) {
    std::string_view before = R"(,"sections":[)";
    for (std::size_t i = 0; i < sections_.size(); ++i) {
      put(before);
      before = "},";
      put(sections_[i]);
      score(verdict.sections[i]);
    }
    put(sections_.empty() ? R"(,"sections":[])" : "}]");
  }

  void findings(const Verdict& verdict) {
    std::string_view comma;
    for (std::size_t i = 0; i < verdict.findings.size(); ++i) {
      const Finding& finding = verdict.findings[i];
      const bool passed =
          finding.status == Status::pass || finding.status == Status::does_not_apply;
      if (passed && detail_ == Detail::failed) {
        continue;
      }
      put(comma);
      comma = ",";
      findings_.append(i, finding, *line_);
    }
  }

  void said(std::string_view before, const Verdict& verdict, const std::vector<Spoken>& all,
            SpokenKind kind) {
    put(before);
    std::string_view comma;
    for (const Spoken& spoken : all) {
      put(comma);
      comma = ",";
      findings_.append_said(spoken, verdict.findings[spoken.finding], kind, *line_);
    }
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
      append_json_text(*line_, question);
    }
  }

  const Program& program_;
  std::vector<std::string> languages_;
  Detail detail_;
  FindingLines findings_;
  std::string opening_;
  std::vector<std::string> sections_;
  std::string closing_;
  std::vector<Memo> safety_;
  std::vector<GradeWords> grades_ = std::vector<GradeWords>(1U << grade_place_bits);
  GradeCase case_;
  Memo numerals_;
  std::string* line_ = nullptr;
};

VerdictLines::VerdictLines(const Program& program, std::span<const std::string> languages,
                           Detail detail)
    : writer_(std::make_unique<Writer>(program, languages, detail)) {}
VerdictLines::~VerdictLines() = default;
VerdictLines::VerdictLines(VerdictLines&&) noexcept = default;
VerdictLines& VerdictLines::operator=(VerdictLines&&) noexcept = default;

void VerdictLines::append(const Inspection& inspection, const Verdict& verdict,
                          std::string& lines) {
  writer_->append(inspection, verdict, lines);
}

}  // namespace heelrule
