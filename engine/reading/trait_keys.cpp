#include "engine/reading/trait_keys.hpp"

#include <algorithm>

namespace heelrule {

TraitKeys::TraitKeys(const RuleSet& rules)
    : traits_(rules.traits), next_(traits_.size() + 1), taken_in_(traits_.size() + 1) {
  for (std::size_t i = 0; i < traits_.size(); ++i) {
    if (!std::holds_alternative<DerivedKind>(traits_[i].kind)) {
      by_name_.emplace(traits_[i].name, i);
    }
  }
  std::fill(next_.begin(), next_.end(), traits_.size());
}

void TraitKeys::start() {
  ++record_;
  last_ = traits_.size();
}

std::optional<std::size_t> TraitKeys::take(std::string_view key) {
  const auto known = by_name_.find(key);
  if (known == by_name_.end() || taken_in_[known->second] == record_) {
    return std::nullopt;
  }
  const std::size_t found = known->second;
  // A record that leaves one trait out does not change the order of those that follow.
  const std::size_t expected = next_[last_];
  if (expected == traits_.size() || next_[expected] != found) {
    next_[last_] = found;
  }
  taken_in_[found] = record_;
  last_ = found;
  return found;
}

}  // namespace heelrule
