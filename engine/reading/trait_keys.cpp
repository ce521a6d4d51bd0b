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

std::size_t TraitKeys::find(std::string_view key) const {
  const std::size_t nothing = traits_.size();
  const std::size_t expected = next_[last_];
  if (expected < nothing && traits_[expected].name == key) {
    return expected;
  }
  const auto known = by_name_.find(key);
  return known == by_name_.end() ? nothing : known->second;
}

std::optional<std::size_t> TraitKeys::take(std::string_view key) {
  const std::size_t found = find(key);
  if (found == traits_.size() || taken_in_[found] == record_) {
    return std::nullopt;
  }
  next_[last_] = found;
  taken_in_[found] = record_;
  last_ = found;
  return found;
}

}  // namespace heelrule
