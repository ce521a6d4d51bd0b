// How a trainer wants records marked against a reference.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "engine/model/rule_set.hpp"
#include "engine/reading/tree.hpp"
#include "engine/source/checked.hpp"
#include "engine/source/sources.hpp"

namespace heelrule {

/// A mark by its name, and from how many points on it is given.
struct MarkBoundary {
  std::string name;
  double from = 0;    ///< points, 0 to 100
  std::string means;  ///< may be empty

  bool operator==(const MarkBoundary&) const = default;
};

/// The best mark that remains after a critical fault, by its place in `MarkingRules::marks`;
/// nothing where such a fault caps no mark.
struct CriticalCaps {
  std::optional<std::size_t> must;
  std::optional<std::size_t> safety;
  std::optional<std::size_t> referral;

  bool operator==(const CriticalCaps&) const = default;
};

struct MarkingRules {
  std::string title;
  /// By trait: how far from the reference is still right. Stored unit of a measure, levels of a
  /// scale, a fraction of the whole of each fibre. 0 or more.
  std::vector<std::optional<double>> tolerances;
  /// By trait: what it weighs, in place of what it is worth in the verdict. 0 or more.
  std::vector<std::optional<double>> weights;
  double level_off = 0.5;  ///< share of its credit that a level off costs, 0 to 1; two cost twice
  std::vector<MarkBoundary> marks;  ///< best first, falling, the last from 0; never empty
  CriticalCaps caps;

  bool operator==(const MarkingRules&) const = default;
};

/// What counts where the trainer says nothing; boundaries, caps and the cost of a level are a
/// choice of ours: `secure` from 85 points, `able` from 70, `learning` from 50, `again` from 0; a
/// must that is judged wrongly leaves `learning` at best, a missed safety question or referral
/// `again`.
MarkingRules usual_marking_rules(const RuleSet& rules);

/// Reads a marking file (YAML, or JSON if its first sign is `{`) for the traits of `rules`. Every
/// part may be left out and is then as usual; where `marks` are given and `critical` is not, every
/// critical fault leaves the worst of them.
///
///     tolerances: {foot_length: 2 mm, heel_counter: 1 level, lining: 3 %}
///     level_off: 50 %
///     weights: {loose_nail: 8}
///     critical: {must: learning, safety: again, referral: none}
///     marks: {secure: {from: 85, means: May inspect alone.}, again: {from: 0}}
Checked<MarkingRules> load_marking_rules(const Sources& sources, std::uint32_t source,
                                         const RuleSet& rules);

}  // namespace heelrule
