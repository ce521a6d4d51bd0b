#include "engine/scoring/check_rules.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/scoring/check_bands.hpp"
#include "engine/scoring/check_sections.hpp"
#include "engine/scoring/unknown_name.hpp"

namespace heelrule {
namespace {

std::vector<std::string_view> grade_names(const RuleSet& rules) {
  std::vector<std::string_view> names;
  names.reserve(rules.grades.size());
  for (const Grade& grade : rules.grades) {
    names.push_back(grade.name.value);
  }
  return names;
}

std::vector<std::string_view> trait_names(const RuleSet& rules) {
  std::vector<std::string_view> names;
  names.reserve(rules.traits.size());
  for (const Trait& trait : rules.traits) {
    names.push_back(trait.name);
  }
  return names;
}

class RuleChecker {
 public:
  RuleChecker(const RuleSet& rules, const TraitTypes& traits, const Rule& rule,
              Diagnostics& diagnostics)
      : rules_(rules), traits_(traits), rule_(rule), diagnostics_(diagnostics) {}

  std::optional<RuleProgram> check() {
    const std::size_t errors_before = diagnostics_.error_count();
    RuleProgram program;
    check_section(program);
    check_cap();
    const TraitType* read = check_trait(program);
    if (read != nullptr) {
      check_sides(*read);
      if (rule_.bands.empty() && rule_.levels.empty()) {
        return std::nullopt;  // has been reported
      }
      if (rule_.bands.empty()) {
        check_levels(*read, rules_.traits[program.trait], rules_, rule_, program, diagnostics_);
      } else {
        check_bands(*read, rules_.traits[program.trait], rules_, rule_, program, diagnostics_);
      }
      check_words(*read, program);
    }
    const bool sound = read != nullptr && diagnostics_.error_count() == errors_before;
    return sound ? std::optional(std::move(program)) : std::nullopt;
  }

 private:
  void check_section(RuleProgram& program) {
    if (const auto section = rules_.find_section(rule_.section.value)) {
      program.section = static_cast<std::uint32_t>(*section);
    } else {
      report_unknown(rule_.section, "section", section_names(rules_), diagnostics_);
    }
  }

  void check_cap() {
    if (!rule_.caps) {
      return;
    }
    const auto grade = rules_.find_grade(rule_.caps->value);
    if (!grade) {
      report_unknown(*rule_.caps, "grade", grade_names(rules_), diagnostics_);
    } else if (*grade == 0) {
      diagnostics_.error(
          rule_.caps->where,
          fmt::format("`{}` is the best grade, so this must caps nothing", rule_.caps->value),
          "name a lower grade, or leave `must` out");
    }
  }

  const TraitType* check_trait(RuleProgram& program) {
    const auto trait = rules_.find_trait(rule_.reads.value);
    if (!trait) {
      report_unknown(rule_.reads, "trait", trait_names(rules_), diagnostics_);
      return nullptr;
    }
    program.trait = static_cast<std::uint32_t>(*trait);
    const auto& type = traits_.types[*trait];
    return type ? &*type : nullptr;
  }

  void check_sides(const TraitType& read) {
    if (rule_.sides != SideRule::worse && !read.has_sides) {
      diagnostics_.error(
          rule_.reads.where,
          fmt::format("`{}` has no sides, and the rule says how sides count", rule_.reads.value),
          "leave `sides` out");
    }
  }

  void check_words(const TraitType& read, RuleProgram& program) {
    const SlotsAllowed allowed{read.has_sides, false, false, false,
                               "these words go with every band or level"};
    program.words = {{},
                     read_phrase(rule_.words.caution, allowed, diagnostics_),
                     read_phrase(rule_.words.referral, allowed, diagnostics_),
                     read_phrase(rule_.words.advice, allowed, diagnostics_)};
  }

  const RuleSet& rules_;
  const TraitTypes& traits_;
  const Rule& rule_;
  Diagnostics& diagnostics_;
};

}  // namespace

std::vector<std::optional<RuleProgram>> check_rules(const RuleSet& rules, const TraitTypes& traits,
                                                    Diagnostics& diagnostics) {
  std::vector<std::optional<RuleProgram>> programs;
  programs.reserve(rules.rules.size());
  for (const Rule& rule : rules.rules) {
    programs.push_back(RuleChecker(rules, traits, rule, diagnostics).check());
  }
  return programs;
}

Unit printed_unit(const Trait& trait, const Type& type) {
  if (const auto* measure = std::get_if<MeasureKind>(&trait.kind)) {
    return measure->unit;
  }
  if (const auto* derived = std::get_if<DerivedKind>(&trait.kind); derived && derived->shown) {
    return derived->shown->value;
  }
  return usual_unit(type.dimension).value_or(Unit::count);
}

}  // namespace heelrule
