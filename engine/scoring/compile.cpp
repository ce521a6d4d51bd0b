#include "engine/scoring/compile.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/formula/check.hpp"
#include "engine/formula/type_words.hpp"
#include "engine/scoring/check_grades.hpp"
#include "engine/scoring/check_languages.hpp"
#include "engine/scoring/check_rules.hpp"
#include "engine/scoring/check_sections.hpp"
#include "engine/scoring/derive_types.hpp"
#include "engine/scoring/lower.hpp"

namespace heelrule {
namespace {

// Σ weight·credit stays a whole number that a double holds exactly, with room for halves and
// quarters.
constexpr double most_weight = 1'000'000 * weight_step;

// A yes/no formula without sides; nothing where there is none, or where it is not sound.
std::optional<Expression> check_condition(const std::optional<Located<std::string>>& applies,
                                          const RuleSet& rules, const TraitTypes& traits,
                                          Diagnostics& diagnostics) {
  const auto syntax =
      applies && !applies->value.empty() ? parse_formula(*applies, diagnostics) : std::nullopt;
  auto found = syntax ? check_formula(*syntax, rules, traits.types, diagnostics) : std::nullopt;
  if (!found) {
    return std::nullopt;
  }
  if (found->type.kind != Type::Kind::yes_no) {
    diagnostics.error(
        applies->where,
        fmt::format("`applies` is yes or no, and this is {}", in_words(found->type, rules)),
        "compare it, as in `heel_height > 25 mm`");
  } else if (found->has_sides) {
    diagnostics.error(applies->where, "`applies` is asked once, and this has two sides",
                      "say which side, as in `larger(heel_height) > 25 mm`");
  }
  return found;
}

// Of each rule, and then of each change.
std::vector<std::optional<Expression>> check_applies(const RuleSet& rules, const TraitTypes& traits,
                                                     Diagnostics& diagnostics) {
  std::vector<std::optional<Expression>> found;
  found.reserve(rules.rules.size() + rules.changes.size());
  for (const Rule& rule : rules.rules) {
    found.push_back(check_condition(rule.applies, rules, traits, diagnostics));
  }
  for (const Change& change : rules.changes) {
    found.push_back(check_condition(change.applies, rules, traits, diagnostics));
  }
  return found;
}

void check_total_weight(const RuleSet& rules, Diagnostics& diagnostics) {
  double total = 0;
  for (const Rule& rule : rules.rules) {
    total += rule.weight.value;
  }
  if (total > most_weight) {
    diagnostics.error(rules.where, "the weights add up to more than 1000000",
                      "scale them down: only their proportions count");
  }
}

}  // namespace

Checked<Program> compile(RuleSet rules, Diagnostics diagnostics) {
  const TraitTypes traits = derive_types(rules, diagnostics);
  auto programs = check_rules(rules, traits, diagnostics);
  const auto applies = check_applies(rules, traits, diagnostics);
  check_grades(rules, programs, diagnostics);
  check_total_weight(rules, diagnostics);
  check_sections(rules, diagnostics);
  check_languages(rules, diagnostics);
  if (diagnostics.has_errors()) {
    return Checked<Program>(std::move(diagnostics));
  }
  Program program;
  for (auto& checked : programs) {
    program.rule_programs.push_back(std::move(*checked));
  }
  for (const Grade& grade : rules.grades) {
    program.grade_bounds.push_back(grade.from.value);
  }
  program.rules = std::move(rules);
  lower(traits, applies, program);
  return {std::move(program), std::move(diagnostics)};
}

}  // namespace heelrule
