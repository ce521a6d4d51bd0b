#include "engine/quantity/range.hpp"

namespace heelrule {

bool holds(const QuantityRange& range, double stored) {
  return stored >= range.from.stored && stored <= range.to.stored;
}

std::string show(const QuantityRange& range, Unit unit, int places) {
  return show(range.from.stored, unit, places) + " to " + show(range.to.stored, unit, places);
}

std::string show(const QuantityRange& range, Unit unit) {
  return show(range.from.stored, unit) + " to " + show(range.to.stored, unit);
}

}  // namespace heelrule
