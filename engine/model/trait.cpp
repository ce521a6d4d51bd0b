#include "engine/model/trait.hpp"

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

}  // namespace heelrule
