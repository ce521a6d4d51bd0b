#include "engine/model/inspection.hpp"

#include <algorithm>
#include <limits>
#include <numeric>
#include <utility>

#include "engine/quantity/settle.hpp"

namespace heelrule {

double mean(const Readings& readings) {
  return settled(std::accumulate(readings.stored.begin(), readings.stored.end(), 0.0) /
                 static_cast<double>(readings.stored.size()));
}

double plain_number(const Value& value) {
  if (const auto* readings = std::get_if<Readings>(&value)) {
    return mean(*readings);
  }
  if (const auto* seen = std::get_if<LevelSeen>(&value)) {
    return static_cast<double>(seen->level);
  }
  if (const auto* answer = std::get_if<Answer>(&value)) {
    return answer->yes ? 1.0 : 0.0;
  }
  return std::numeric_limits<double>::quiet_NaN();
}

const Observation* Inspection::find(std::size_t trait, Side side) const {
  const auto key = std::pair(trait, side);
  const auto at = std::lower_bound(
      observations.begin(), observations.end(), key,
      [](const Observation& a, const auto& b) { return std::pair(a.trait, a.side) < b; });
  return at != observations.end() && std::pair(at->trait, at->side) == key ? &*at : nullptr;
}

}  // namespace heelrule
