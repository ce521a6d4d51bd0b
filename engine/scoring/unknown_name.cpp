#include "engine/scoring/unknown_name.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/quantity/nearest.hpp"

namespace heelrule {
namespace {

// So many names still make a hint that is read.
constexpr std::size_t most_listed = 12;

}  // namespace

void report_unknown(const Located<std::string>& name, std::string_view kind,
                    std::span<const std::string_view> known, Diagnostics& diagnostics) {
  if (name.value.empty()) {
    return;
  }
  Nearest nearest(name.value);
  for (const std::string_view one : known) {
    nearest.offer(one);
  }
  std::string hint = nearest.question();
  if (known.empty()) {
    hint = fmt::format("this rule set has none yet: add it under `{}s:`", kind);
  } else if (!nearest.found() && known.size() <= most_listed) {
    hint = fmt::format("its {}s are `{}`", kind, fmt::join(known, "`, `"));
  } else if (!nearest.found()) {
    hint = fmt::format("name a {} of this rule set", kind);
  }
  diagnostics.error(name.where, fmt::format("there is no {} `{}`", kind, name.value),
                    std::move(hint));
}

}  // namespace heelrule
