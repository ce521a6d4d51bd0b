#include "engine/report/verdict_table.hpp"

#include <fmt/format.h>

#include <array>

#include "engine/quantity/decimal.hpp"
#include "engine/report/account.hpp"
#include "engine/report/fault_line.hpp"
#include "engine/report/value_words.hpp"
#include "engine/scoring/spoken.hpp"
#include "engine/source/csv_cell.hpp"

namespace heelrule {
namespace {

constexpr std::array<std::string_view, 13> fixed_columns{"client",
                                                         "observer",
                                                         "date",
                                                         "shoe",
                                                         "marked",
                                                         "grade",
                                                         "stands",
                                                         "points",
                                                         "lowest",
                                                         "highest",
                                                         "see_practitioner_first",
                                                         "referrals",
                                                         "cautions"};

void join(std::string& words, std::string_view more) {
  if (!words.empty()) {
    words += " | ";
  }
  words += more;
}

}  // namespace

VerdictTable::VerdictTable(const Program& program, std::span<const std::string> languages)
    : program_(program), languages_(fallback_order(languages, program.rules)) {}

std::string VerdictTable::header() const {
  std::string row = fmt::format("{}", fmt::join(fixed_columns, ","));
  for (const Contribution& contribution : program_.contributions) {
    const std::string_view side = in_words(contribution.side);
    row += fmt::format(",{}{}{}", program_.rules.rules[contribution.rule].name,
                       side.empty() ? "" : ".", side);
  }
  return row + ",error\n";
}

std::string VerdictTable::row(const Inspection& inspection, const Verdict& verdict) const {
  std::string row;
  append_csv_cell(row, inspection.client);
  for (const std::string* text :
       {&inspection.observer, &inspection.date, &inspection.shoe_label, &inspection.shoe_marked}) {
    row += ',';
    append_csv_cell(row, *text);
  }
  row += ',';
  row += verdict.grade ? program_.rules.grades[*verdict.grade].name.value : "";
  row += verdict.stands ? ",yes," : ",no,";
  if (const auto points = verdict.score.points()) {
    append_shortest(row, *points);
  }
  row += ',';
  append_shortest(row, verdict.score.lowest_points());
  row += ',';
  append_shortest(row, verdict.score.highest_points());
  row += verdict.refers() ? ",yes," : ",no,";
  std::string referrals = safety_referrals(verdict);
  const std::string more = said(verdict, verdict.referrals, &SpokenWords::referral);
  if (!more.empty()) {
    join(referrals, more);
  }
  append_csv_cell(row, referrals);
  row += ',';
  append_csv_cell(row, said(verdict, verdict.cautions, &SpokenWords::caution));
  for (const Finding& finding : verdict.findings) {
    row += ',';
    row += in_words(finding.status);
  }
  return row + ",\n";
}

std::string VerdictTable::row(const LineFault& fault) const {
  std::string row(fixed_columns.size() + program_.contributions.size(), ',');
  append_csv_cell(row, fault_words(fault));
  return row + "\n";
}

std::string VerdictTable::said(const Verdict& verdict, const std::vector<Spoken>& all,
                               Phrase SpokenWords::* which) const {
  std::string words;
  for (const Spoken& one : all) {
    const Finding& finding = verdict.findings[one.finding];
    const SpokenWords& spoken = words_of(one, finding, program_);
    join(words,
         fmt::format("{}: {}", finding_title(program_, finding, languages_),
                     fill(spoken.*which, languages_, program_, finding, reading_of(one, finding))));
  }
  return words;
}

std::string VerdictTable::safety_referrals(const Verdict& verdict) const {
  std::string words;
  for (const SafetyAnswer& answer : verdict.safety) {
    if (answer.yes) {
      join(words, program_.rules.safety[answer.question].referral.in(languages_));
    }
  }
  return words;
}

}  // namespace heelrule
