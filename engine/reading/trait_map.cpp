#include "engine/reading/trait_map.hpp"

#include <fmt/format.h>

#include "engine/quantity/nearest.hpp"

namespace heelrule {

const Node* take_trait_map(MapReader& map, std::string_view key, std::string_view hint) {
  const Node* node = map.take(key);
  if (node == nullptr || node->is_map()) {
    return node;
  }
  map.diagnostics().error(
      node->where,
      fmt::format("`{}` is a map from trait to value, and this is {}", key, in_words(node->kind)),
      std::string(hint));
  return nullptr;
}

std::optional<std::size_t> named_trait(const RuleSet& rules, const Located<std::string>& name,
                                       std::string_view hint, Diagnostics& diagnostics) {
  const auto trait = rules.find_trait(name.value);
  if (!trait) {
    Nearest nearest(name.value);
    for (const Trait& known : rules.traits) {
      nearest.offer(known.name);
    }
    diagnostics.error(name.where, fmt::format("there is no trait `{}`", name.value),
                      nearest.found() ? nearest.question() : std::string(hint));
  }
  return trait;
}

}  // namespace heelrule
