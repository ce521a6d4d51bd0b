#include "engine/scoring/limit.hpp"

#include <cmath>

#include "engine/quantity/settle.hpp"

namespace heelrule {

std::optional<Limit> limit_of(const RuleProgram& rule, const SideReading& reading) {
  const std::optional<std::size_t>& cut = rule.better[reading.band];
  if (!cut) {
    return std::nullopt;
  }
  const double at = rule.cuts[*cut];
  return Limit{at, std::fabs(settled(at - reading.value)), *cut == reading.band};
}

}  // namespace heelrule
