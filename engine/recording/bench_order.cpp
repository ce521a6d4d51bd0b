#include "engine/recording/bench_order.hpp"

#include <algorithm>
#include <optional>

namespace heelrule {
namespace {

using SectionOfTrait = std::vector<std::optional<std::size_t>>;

// For each trait the section of the first rule that needs it, be it through a formula.
SectionOfTrait sections_of_rules(const Program& program) {
  SectionOfTrait found(program.rules.traits.size());
  for (const RuleProgram& rule : program.rule_programs) {
    const auto claim = [&](const std::vector<Register>& needs) {
      for (const Register need : needs) {
        std::optional<std::size_t>& section = found[program.inputs[need].input.trait];
        section = section.value_or(rule.section);
      }
    };
    for (const auto& needs : program.traits[rule.trait].needs) {
      claim(needs);
    }
    claim(rule.applies_needs);
  }
  return found;
}

}  // namespace

std::vector<BenchSection> bench_order(const Program& program) {
  const RuleSet& rules = program.rules;
  std::vector<BenchSection> sections;
  sections.push_back({BenchSection::Kind::safety, 0, {}});
  for (std::size_t i = 0; i < rules.sections.size(); ++i) {
    sections.push_back({BenchSection::Kind::house, i, {}});
  }
  sections.push_back({BenchSection::Kind::rest, 0, {}});

  const SectionOfTrait of_rules = sections_of_rules(program);
  for (std::size_t i = 0; i < rules.traits.size(); ++i) {
    const Trait& trait = rules.traits[i];
    if (std::holds_alternative<DerivedKind>(trait.kind)) {
      continue;
    }
    const auto section = trait.section ? rules.find_section(trait.section->value) : of_rules[i];
    BenchSection& asked_in = i < rules.safety.size() ? sections.front()
                             : section               ? sections[*section + 1]
                                                     : sections.back();
    asked_in.traits.push_back(i);
  }
  for (BenchSection& section : sections) {
    std::stable_sort(section.traits.begin(), section.traits.end(),
                     [&](std::size_t a, std::size_t b) {
                       return rules.traits[a].order < rules.traits[b].order;
                     });
  }
  std::erase_if(sections, [](const BenchSection& section) { return section.traits.empty(); });
  return sections;
}

std::string_view heading(const BenchSection& section, const RuleSet& rules,
                         std::span<const std::string> languages) {
  switch (section.kind) {
    case BenchSection::Kind::safety:
      return "Safety";
    case BenchSection::Kind::house:
      return rules.sections[section.section].title.in(languages);
    case BenchSection::Kind::rest:
      return "More to record";
  }
  return {};
}

std::string_view short_name(const BenchSection& section, const RuleSet& rules) {
  switch (section.kind) {
    case BenchSection::Kind::safety:
      return "safety";
    case BenchSection::Kind::house:
      return rules.sections[section.section].name.value;
    case BenchSection::Kind::rest:
      return "more";
  }
  return {};
}

}  // namespace heelrule
