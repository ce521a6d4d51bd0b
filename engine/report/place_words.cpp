#include "engine/report/place_words.hpp"

#include <fmt/format.h>

#include <array>
#include <utility>

namespace heelrule {
namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 6> head_titles{
    {{"inspection.date", "Day"},
     {"inspection.observer", "Recorded by"},
     {"inspection.client", "Client"},
     {"inspection.shoe.label", "Pair"},
     {"inspection.shoe.marked", "Marked"},
     {"inspection.note", "Note"}}};

}  // namespace

std::string_view head_title(std::string_view key) {
  for (const auto& [name, title] : head_titles) {
    if (name == key) {
      return title;
    }
  }
  return {};
}

std::string place_title(const RuleSet& rules, std::string_view key,
                        std::span<const std::string> languages) {
  if (const std::string_view title = head_title(key); !title.empty()) {
    return std::string(title);
  }
  std::string_view name = key;
  std::string_view side;
  for (const std::string_view one : {".left", ".right"}) {
    if (name.ends_with(one)) {
      name.remove_suffix(one.size());
      side = one.substr(1);
    }
  }
  const auto trait = rules.find_trait(name);
  if (!trait) {
    return std::string(key);
  }
  const std::string_view ask = rules.traits[*trait].ask.in(languages);
  return side.empty() ? std::string(ask) : fmt::format("{} ({})", ask, side);
}

}  // namespace heelrule
