#include "engine/model/trait.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/quantity/nearest.hpp"

namespace heelrule {

const std::vector<Level>& levels_of(const TraitKind& kind) {
  static const std::vector<Level> none;
  if (const auto* scale = std::get_if<ScaleKind>(&kind)) {
    return scale->levels;
  }
  if (const auto* choice = std::get_if<ChoiceKind>(&kind)) {
    return choice->levels;
  }
  return none;
}

Parsed<std::size_t> find_level(const Trait& trait, std::string_view name) {
  const std::vector<Level>& levels = levels_of(trait.kind);
  const auto known = std::find_if(levels.begin(), levels.end(),
                                  [&](const Level& level) { return level.name.value == name; });
  if (known != levels.end()) {
    return static_cast<std::size_t>(known - levels.begin());
  }
  Nearest nearest(name);
  std::vector<std::string_view> names;
  for (const Level& level : levels) {
    nearest.offer(level.name.value);
    names.push_back(level.name.value);
  }
  return Problem{fmt::format("`{}` has no level `{}`", trait.name, name),
                 nearest.found() ? nearest.question()
                                 : fmt::format("its levels are `{}`", fmt::join(names, "`, `"))};
}

}  // namespace heelrule
