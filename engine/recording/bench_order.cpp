#include "engine/recording/bench_order.hpp"

#include <algorithm>

#include "engine/scoring/rule_needs.hpp"

namespace heelrule {

std::vector<BenchSection> bench_order(const Program& program) {
  const RuleSet& rules = program.rules;
  std::vector<BenchSection> sections;
  sections.push_back({BenchSection::Kind::safety, 0, {}});
  for (std::size_t i = 0; i < rules.sections.size(); ++i) {
    sections.push_back({BenchSection::Kind::house, i, {}});
  }
  sections.push_back({BenchSection::Kind::rest, 0, {}});

  const auto of_rules = sections_of_rules(program);
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
