// Everything that two feet ask for: the one function that `size` needs.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "engine/fitting/child_outlook.hpp"
#include "engine/fitting/foot_change.hpp"
#include "engine/fitting/shoe_advice.hpp"
#include "engine/fitting/sock_advice.hpp"

namespace heelrule {

struct Fitting {
  Visit visit;  ///< the latest
  ToeWindow window;
  std::vector<LoadChange> changes;  ///< of the feet that were measured seated too
  std::optional<SidesDifference> sides;
  ShoeAdvice shoe;
  SockAdvice sock;
  std::optional<ChildOutlook> child;
};

/// The fitting at the latest of the visits, `visits.back()`. Several are of one child, have dates,
/// and come earliest first. `is_child`: the shoes are a child's. Precondition: there is a visit,
/// and a foot was measured standing at the latest.
Fitting fitting(std::span<const Visit> visits, const ToeWindow& window, bool is_child);

}  // namespace heelrule
