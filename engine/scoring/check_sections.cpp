#include "engine/scoring/check_sections.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/scoring/unknown_name.hpp"

namespace heelrule {
namespace {

bool is_used(const std::string& section, const RuleSet& rules) {
  return std::any_of(rules.rules.begin(), rules.rules.end(),
                     [&](const Rule& rule) { return rule.section.value == section; }) ||
         std::any_of(rules.traits.begin(), rules.traits.end(), [&](const Trait& trait) {
           return trait.section && trait.section->value == section;
         });
}

}  // namespace

void check_sections(const RuleSet& rules, Diagnostics& diagnostics) {
  for (const Trait& trait : rules.traits) {
    if (trait.section && !rules.find_section(trait.section->value)) {
      report_unknown(*trait.section, "section", section_names(rules), diagnostics);
    }
  }
  for (const Section& section : rules.sections) {
    if (!is_used(section.name.value, rules)) {
      diagnostics.warning(section.name.where,
                          fmt::format("no rule stands in section `{}`", section.name.value),
                          "leave it out, or put a rule in it");
    }
  }
}

std::vector<std::string_view> section_names(const RuleSet& rules) {
  std::vector<std::string_view> names;
  names.reserve(rules.sections.size());
  for (const Section& section : rules.sections) {
    names.push_back(section.name.value);
  }
  return names;
}

}  // namespace heelrule
