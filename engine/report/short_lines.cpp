#include "engine/report/short_lines.hpp"

#include <optional>

#include "engine/report/fallback_order.hpp"
#include "engine/report/kept_grades.hpp"
#include "engine/report/line_parts.hpp"
#include "engine/report/short_findings.hpp"
#include "engine/report/short_warnings.hpp"
#include "engine/scoring/decide.hpp"

namespace heelrule {

class ShortLines::Writer {
 public:
  Writer(const Program& program, std::span<const std::string> languages, Detail detail)
      : program_(program),
        languages_(fallback_order(languages, program.rules)),
        parts_(program, languages_),
        grades_(program, languages_, detail),
        referrals_(program, languages_, &SpokenWords::referral),
        cautions_(program, languages_, &SpokenWords::caution) {
    if (detail == Detail::failed) {
      findings_.emplace(program, languages_);
    }
  }

  void turn_to(const Block& block, std::span<const InspectionRow> rows) {
    block_ = &block;
    rows_ = rows;
    referrals_.turn_to(block, rows.size());
    cautions_.turn_to(block, rows.size());
    if (findings_) {
      findings_->turn_to(block, rows);
    }
    for (std::size_t row = 0; row < rows.size(); ++row) {
      const Outcome outcome = block.outcome(row);
      parts_.expect({outcome.earned, outcome.weight, outcome.open_weight});
    }
  }

  void append(std::size_t row, GrowingText& line) {
    const Inspection& inspection = rows_[row].inspection;
    decide_briefly(program_, *block_, row, verdict_);
    parts_.open(line);
    LineParts::who_and_when(inspection, line);
    if (verdict_.refers() || referrals_.has(row)) {
      line.put(R"(},"see_practitioner_first":true,"safety":[)");
      parts_.safety(inspection, verdict_, Detail::brief, line);
      line.put(R"(],"referrals":[)");
      referrals_.append(row, line);
      line.put(R"(],"grade":)");
    } else {
      line.put(R"(},"see_practitioner_first":false,"safety":[],"referrals":[],"grade":)");
    }
    grades_.append(inspection, verdict_, line);
    line.put(R"(,"score":)");
    parts_.points(verdict_.score, line);
    if (findings_) {
      line.put(R"(},"findings":[)");
      findings_->append(row, line);
      line.put(R"(],"cautions":[)");
    } else {
      line.put(R"(},"cautions":[)");
    }
    cautions_.append(row, line);
    line.put("]}\n");
  }

 private:
  const Program& program_;
  std::vector<std::string> languages_;
  LineParts parts_;
  KeptGrades grades_;
  ShortWarnings referrals_;
  ShortWarnings cautions_;
  std::optional<ShortFindings> findings_;
  const Block* block_ = nullptr;
  std::span<const InspectionRow> rows_;
  Verdict verdict_;
};

ShortLines::ShortLines(const Program& program, std::span<const std::string> languages,
                       Detail detail)
    : writer_(std::make_unique<Writer>(program, languages, detail)) {}
ShortLines::~ShortLines() = default;
ShortLines::ShortLines(ShortLines&&) noexcept = default;
ShortLines& ShortLines::operator=(ShortLines&&) noexcept = default;

void ShortLines::turn_to(const Block& block, std::span<const InspectionRow> rows) {
  writer_->turn_to(block, rows);
}

void ShortLines::append(std::size_t row, GrowingText& lines) { writer_->append(row, lines); }

}  // namespace heelrule
