#include "engine/report/kept_grades.hpp"

#include "engine/report/account.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/scattered.hpp"

namespace heelrule {

void KeptGrades::append(const Inspection& inspection, const Verdict& verdict, GrowingText& line) {
  know(verdict);
  // Some bits of each: that grades of two cases may have the same does no harm.
  std::uint64_t mixed = case_.stands ? 1 : 0;
  for (const std::size_t grade : case_.grades) {
    mixed = mixed << 15U ^ grade;
  }
  mixed = scattered(mixed ^ (case_.is_open ? 1U : 0U));
  for (const std::size_t cap : case_.caps) {
    mixed = scattered(mixed ^ cap);
  }
  Kept& kept = kept_[place_among(mixed, place_bits)];
  if (kept.words.text().empty() || kept.of != case_) {
    kept = {case_, PaddedText(words(inspection, verdict))};
  }
  line.put(kept.words);
}

void KeptGrades::know(const Verdict& verdict) {
  const auto or_none = [](const std::optional<std::size_t>& grade) {
    return grade ? *grade + 1 : 0;
  };
  case_.grades = {or_none(verdict.grade), or_none(verdict.uncapped), verdict.lowest_grade,
                  verdict.highest_grade};
  case_.stands = verdict.stands;
  if (!in_full_) {
    return;
  }
  case_.is_open = verdict.score.open_weight > 0;
  case_.caps.clear();
  for (std::size_t i = 0; i < verdict.findings.size(); ++i) {
    if (verdict.findings[i].cap) {
      case_.caps.push_back(i);
    }
  }
}

std::string KeptGrades::words(const Inspection& inspection, const Verdict& verdict) const {
  JsonWriter json(JsonWriter::Layout::compact);
  if (in_full_) {
    write_grade(json, program_, brief_account(program_, inspection, verdict, languages_), verdict);
  } else {
    write_grade_names(json, program_, verdict);
  }
  return json.take();
}

}  // namespace heelrule
