#include "engine/report/readings_data.hpp"

#include <fmt/format.h>

#include <array>
#include <functional>
#include <set>
#include <string>
#include <vector>

#include "engine/formula/token.hpp"
#include "engine/report/recorded_words.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

constexpr std::array<Side, 3> all_sides{Side::none, Side::left, Side::right};

std::string_view key_of(Side side) { return side == Side::none ? "pair" : in_words(side); }

bool is_safety_question(const RuleSet& rules, std::size_t trait) {
  return trait < rules.safety.size();
}

void add_once(std::string& words, std::string_view more) {
  if (!more.empty() && words.find(more) == std::string::npos) {
    words += words.empty() ? "" : "; ";
    words += more;
  }
}

using FormulaWords = std::set<std::string, std::less<>>;

// Of all formulas of the rule set, the names of the traits that they read among them.
FormulaWords formula_words(const RuleSet& rules) {
  FormulaWords words;
  for (const Trait& trait : rules.traits) {
    if (const auto* derived = std::get_if<DerivedKind>(&trait.kind)) {
      Diagnostics none;
      for (const Token& token :
           split_formula(derived->formula, none).value_or(std::vector<Token>{})) {
        if (token.kind == TokenKind::word) {
          words.emplace(token.text);
        }
      }
    }
  }
  return words;
}

void add_recorded(const ReportSubject& subject, std::size_t trait, const FormulaWords& in_formulas,
                  PageData& data) {
  const RuleSet& rules = subject.program.rules;
  PageData row;
  std::string doubt;
  std::string notes;
  bool any = false;
  for (const Side side : all_sides) {
    if (const Observation* seen = subject.record.inspection.find(trait, side)) {
      row.words(key_of(side), recorded_words(rules, *seen));
      add_once(doubt, recorded_doubt_words(rules, *seen));
      add_once(notes, seen->note);
      any = true;
    }
  }
  if (any) {
    row.words("ask", rules.traits[trait].ask.in(subject.languages));
    row.words("name", rules.traits[trait].name);
    row.fact("is_in_a_formula", in_formulas.contains(rules.traits[trait].name));
    row.words("doubt", doubt);
    row.words("noted", notes);
    data.add("readings") = std::move(row);
  }
}

// As the first rule that reads it prints it.
const Finding* first_reader(const ReportSubject& subject, std::size_t trait) {
  for (const Finding& finding : subject.record.verdict.findings) {
    if (subject.program.rule_programs[finding.rule].trait == trait && !finding.readings.empty()) {
      return &finding;
    }
  }
  return nullptr;
}

bool add_worked_out(const ReportSubject& subject, std::size_t trait, PageData& data) {
  const Trait& known = subject.program.rules.traits[trait];
  const auto* derived = std::get_if<DerivedKind>(&known.kind);
  const Finding* finding = derived == nullptr ? nullptr : first_reader(subject, trait);
  if (finding == nullptr) {
    return false;
  }
  PageData& row = data.add("worked_out");
  row.words("ask", known.ask.in(subject.languages));
  row.words("name", known.name);
  row.words("formula", derived->formula.value);
  const RuleProgram& rule = subject.program.rule_programs[finding->rule];
  for (const SideReading& reading : finding->readings) {
    row.words(key_of(reading.side), value_words(subject.program, trait, reading.value, rule.cuts));
  }
  return true;
}

}  // namespace

void add_readings(const ReportSubject& subject, PageData& data) {
  const RuleSet& rules = subject.program.rules;
  const FormulaWords in_formulas = formula_words(rules);
  bool any = false;
  for (std::size_t trait = 0; trait < rules.traits.size(); ++trait) {
    if (!is_safety_question(rules, trait)) {
      add_recorded(subject, trait, in_formulas, data);
    }
    any = add_worked_out(subject, trait, data) || any;
  }
  data.fact("any_worked_out", any);
}

}  // namespace heelrule
