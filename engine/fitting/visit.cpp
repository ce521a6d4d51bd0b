#include "engine/fitting/visit.hpp"

namespace heelrule {

std::optional<Side> longer_foot(const Visit& visit) {
  const auto& left = visit.left.length;
  const auto& right = visit.right.length;
  if (!left && !right) {
    return std::nullopt;
  }
  return !right || (left && left->value > right->value) ? Side::left : Side::right;
}

}  // namespace heelrule
