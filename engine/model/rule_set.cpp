#include "engine/model/rule_set.hpp"

#include <algorithm>

namespace heelrule {
namespace {

template <class List, class NameOf>
std::optional<std::size_t> find(const List& list, std::string_view name, NameOf name_of) {
  const auto at = std::find_if(list.begin(), list.end(),
                               [&](const auto& entry) { return name_of(entry) == name; });
  if (at == list.end()) {
    return std::nullopt;
  }
  return static_cast<std::size_t>(at - list.begin());
}

}  // namespace

std::string_view RuleSet::short_name() const {
  std::string_view words = name;
  words.remove_prefix(words.rfind('/') + 1);
  words.remove_suffix(words.ends_with(".yaml") ? 5 : 0);
  return words;
}

std::optional<std::size_t> RuleSet::find_trait(std::string_view trait_name) const {
  return find(traits, trait_name,
              [](const Trait& trait) -> const std::string& { return trait.name; });
}

std::optional<std::size_t> RuleSet::find_section(std::string_view section_name) const {
  return find(sections, section_name,
              [](const Section& section) -> const std::string& { return section.name.value; });
}

std::optional<std::size_t> RuleSet::find_grade(std::string_view grade_name) const {
  return find(grades, grade_name,
              [](const Grade& grade) -> const std::string& { return grade.name.value; });
}

}  // namespace heelrule
