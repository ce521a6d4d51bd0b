#include "engine/report/finding_table.hpp"

#include <fmt/format.h>

#include <array>

#include "engine/quantity/decimal.hpp"
#include "engine/report/account.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/value_words.hpp"
#include "engine/report/verdict_words.hpp"
#include "engine/source/csv_cell.hpp"

namespace heelrule {
namespace {

constexpr std::array<std::string_view, 22> columns{
    "client",  "observer", "date",  "shoe",   "marked",  "grade", "points", "kind",
    "section", "rule",     "title", "status", "left",    "right", "value",  "weight",
    "earned",  "gain",     "must",  "words",  "because", "source"};

struct Row {
  std::string_view kind;
  std::string section;
  std::string rule;
  std::string title;
  std::string status;
  std::array<std::string, 3> read;     // left, right, value
  std::array<std::string, 3> numbers;  // weight, earned, gain
  std::string must;
  std::string words;
  std::string because;
  std::string source;
};

class TableWriter {
 public:
  TableWriter(const Program& program, const Inspection& inspection, const Verdict& verdict,
              std::span<const std::string> languages)
      : program_(program),
        inspection_(inspection),
        verdict_(verdict),
        account_(account(program, inspection, verdict, languages)) {}

  std::string write() {
    for (const SafetyAccount& told : account_.safety) {
      safety(told);
    }
    said("referral", account_.referrals);
    for (const FindingAccount& told : account_.findings) {
      finding(told);
    }
    said("caution", account_.cautions);
    said("advice", account_.advice);
    return std::move(rows_);
  }

 private:
  void append(const Row& row) {
    for (const std::string* text : {&inspection_.client, &inspection_.observer, &inspection_.date,
                                    &inspection_.shoe_label, &inspection_.shoe_marked}) {
      text_cell(*text);
    }
    text_cell(account_.grade);
    rows_ += points_words(program_, verdict_) + ",";
    for (const std::string_view text :
         {row.kind, std::string_view(row.section), std::string_view(row.rule),
          std::string_view(row.title), std::string_view(row.status)}) {
      text_cell(text);
    }
    for (const std::string& text : row.read) {
      text_cell(text);
    }
    for (const std::string& number : row.numbers) {
      rows_ += number + ",";
    }
    text_cell(row.must);
    text_cell(row.words);
    text_cell(row.because);
    append_csv_cell(rows_, row.source);
    rows_ += '\n';
  }

  void text_cell(std::string_view text) {
    append_csv_cell(rows_, text);
    rows_ += ',';
  }

  void safety(const SafetyAccount& told) {
    const SafetyAnswer& answer = verdict_.safety[told.answer];
    Row row;
    row.kind = "safety";
    row.rule = program_.rules.traits[program_.rules.safety[answer.question].trait].name;
    row.title = told.question;
    row.status = answer.yes ? "yes" : answer.asked ? "no" : "not answered";
    row.words = told.referral;
    append(row);
  }

  Row about(const Finding& finding, std::string_view kind, const std::string& title) const {
    Row row;
    row.kind = kind;
    row.section = account_.sections[program_.rule_programs[finding.rule].section];
    row.rule = program_.rules.rules[finding.rule].name;
    row.title = title;
    return row;
  }

  void finding(const FindingAccount& told) {
    const Finding& finding = verdict_.findings[told.finding];
    Row row = about(finding, "finding", told.title);
    row.status = in_words(finding.status);
    for (const SideReading& reading : finding.readings) {
      const std::size_t column = reading.side == Side::left    ? 0
                                 : reading.side == Side::right ? 1
                                                               : 2;
      const RuleProgram& rule = program_.rule_programs[finding.rule];
      row.read.at(column) = value_words(program_, rule.trait, reading.value, rule.cuts);
    }
    row.numbers[0] = shortest(finding.weight / weight_step);
    if (is_judged(finding.status)) {
      row.numbers[1] = shortest(finding.weight * finding.credit / full_credit / weight_step);
      row.numbers[2] = shortest(finding.gain);
    }
    row.must = program_.rules.rules[finding.rule].caps ? "yes" : "no";
    row.words = told.sentence;
    row.because = told.because;
    row.source = told.source;
    append(row);
  }

  void said(std::string_view kind, const std::vector<Said>& all) {
    for (const Said& said : all) {
      Row row = about(verdict_.findings[said.finding], kind, said.title);
      row.words = said.words;
      append(row);
    }
  }

  const Program& program_;
  const Inspection& inspection_;
  const Verdict& verdict_;
  Account account_;
  std::string rows_;
};

}  // namespace

std::string finding_table_header() { return fmt::format("{}\n", fmt::join(columns, ",")); }

std::string finding_table(const Program& program, const Inspection& inspection,
                          const Verdict& verdict, std::span<const std::string> languages) {
  return TableWriter(program, inspection, verdict, languages).write();
}

}  // namespace heelrule
