#include "engine/report/fallback_order.hpp"

#include <string_view>

namespace heelrule {
namespace {

// What a language tag falls back to: `es-MX` to `es`. A single letter only introduces what followed
// it.
std::string_view without_last_part(std::string_view tag) {
  const std::size_t hyphen = tag.rfind('-');
  if (hyphen == std::string_view::npos) {
    return {};
  }
  const bool single = hyphen >= 2 && tag[hyphen - 2] == '-';
  return tag.substr(0, single ? hyphen - 2 : hyphen);
}

}  // namespace

std::vector<std::string> fallback_order(std::span<const std::string> languages,
                                        const RuleSet& rules) {
  std::vector<std::string> order;
  for (std::string_view tag : languages) {
    while (!tag.empty()) {
      order.emplace_back(tag);
      tag = without_last_part(tag);
    }
  }
  order.insert(order.end(), rules.languages.begin(), rules.languages.end());
  return order;
}

}  // namespace heelrule
