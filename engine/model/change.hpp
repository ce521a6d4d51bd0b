// Something that can be changed about a pair, and what that does to what was recorded.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/model/text.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

/// A trait that a change moves, on both sides where it has sides.
struct MovedTrait {
  std::size_t trait = 0;  ///< index in `RuleSet::traits`; recorded, and a plain number
  bool adds = false;      ///< the amount is added to what was recorded; else it takes its place
  double amount = 0;      ///< stored unit, index of a level, or 0/1

  bool operator==(const MovedTrait&) const = default;
};

/// A new insole, another lacing, half a size more.
struct Change {
  std::string name;
  Span where;                                   ///< of the name
  Text title;                                   ///< what to do, in words
  std::vector<MovedTrait> moves;                ///< never empty, each trait once
  std::optional<Located<std::string>> applies;  ///< a formula
  Text source;

  bool operator==(const Change&) const = default;
};

/// How many changes a rule set may name: all their combinations are tried.
constexpr std::size_t most_changes = 12;

}  // namespace heelrule
