// Building rule sets on others: joining their trees.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/reading/tree.hpp"
#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// Two extended rule sets that say different things about the same key.
struct Disagreement {
  std::string path;  ///< `rules.toe_allowance.weight`
  Span first;
  Span second;
};

/// Joins `other` into `base`, as two rule sets that are extended side by side: maps key by key,
/// everything else must be the same, come from the same place, or be an override of what stands on
/// the other side. What is neither is left as in `base` and noted.
void join_beside(Node& base, const Node& other, std::vector<Disagreement>& disagreements);

/// Lays `own` over `base`: maps key by key, everything else replaces what was there.
void lay_over(Node& base, const Node& own);

/// Takes out what a dotted path names (`rules.heel_pitch.must`). False if there is no such thing.
bool drop(Node& tree, std::string_view path);

/// Whether `own` says something at `path`, or replaces a whole that `path` lies in.
bool decides(const Node& own, std::string_view path);

}  // namespace heelrule
