#include "engine/report/kept_grades.hpp"

#include "engine/report/account.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/json_writer.hpp"

namespace heelrule {
namespace {

constexpr std::uint64_t spread = 0x9E3779B97F4A7C15;  // as in `Memo`

}  // namespace

void KeptGrades::append(const Inspection& inspection, const Verdict& verdict, GrowingText& line) {
  know(verdict);
  std::uint64_t mixed = case_.grades * spread;
  for (const std::uint32_t cap : case_.caps) {
    mixed = (mixed ^ cap) * spread;
  }
  Kept& kept = kept_[static_cast<std::size_t>(mixed >> (64U - place_bits))];
  if (kept.words.text().empty() || kept.of != case_) {
    kept = {case_, PaddedText(words(inspection, verdict))};
  }
  line.put(kept.words);
}

void KeptGrades::know(const Verdict& verdict) {
  // No rule set has so many grades that one would need more bits.
  constexpr unsigned bits = 15;
  const auto or_none = [](const std::optional<std::size_t>& grade) {
    return grade ? *grade + 1 : 0;
  };
  case_.grades = verdict.stands ? 1 : 0;
  for (const std::size_t part : {or_none(verdict.grade), or_none(verdict.uncapped),
                                 verdict.lowest_grade, verdict.highest_grade}) {
    case_.grades = case_.grades << bits | part;
  }
  if (!in_full_) {
    return;
  }
  case_.grades = case_.grades << 1U | (verdict.score.open_weight > 0 ? 1U : 0U);
  case_.caps.clear();
  for (std::uint32_t i = 0; i < verdict.findings.size(); ++i) {
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
