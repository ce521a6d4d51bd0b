#include "engine/fitting/fitting.hpp"

namespace heelrule {

Fitting fitting(std::span<const Visit> visits, const ToeWindow& window, bool is_child) {
  const Visit& visit = visits.back();
  Fitting found;
  found.visit = visit;
  found.window = window;
  for (const Side side : both_sides) {
    if (const auto change = load_change(visit, side)) {
      found.changes.push_back(*change);
    }
  }
  found.sides = difference_of_sides(visit);
  found.shoe = shoe_advice(visit, window, is_child);
  found.sock = sock_advice(visit);
  found.child = child_outlook(visits, window);
  return found;
}

}  // namespace heelrule
