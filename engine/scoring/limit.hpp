// How far a reading lies from better.
#pragma once

#include <optional>

#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// How far a value lies from the cut point toward a neighbouring band that earns more. Stored unit.
struct Limit {
  double at = 0;
  double distance = 0;          ///< 0 or more
  bool value_is_short = false;  ///< the value lies below the limit

  bool operator==(const Limit&) const = default;
};

/// The limit of a reading that `rule` judged; nothing of levels, and where neither neighbouring
/// band earns more.
std::optional<Limit> limit_of(const RuleProgram& rule, const SideReading& reading);

}  // namespace heelrule
