// How long a child's pair will last, and when to measure again.
#pragma once

#include <optional>
#include <span>

#include "engine/fitting/outgrowing.hpp"
#include "engine/fitting/toe_window.hpp"

namespace heelrule {

/// A pair, and what is left in it to grow into.
struct PairOutlook {
  Side side = Side::none;  ///< the foot that has less
  Measured reserve;        ///< below 0: used up
  Outgrowing outgrown;
};

struct ChildOutlook {
  double age = 0;                      ///< in years, at the latest visit
  std::optional<OwnGrowth> own;        ///< where there are two dated visits or more
  bool by_own_rate = false;            ///< the own rate is better known than the table, and is used
  std::optional<PairOutlook> present;  ///< the pair that is worn, where its inside was measured
  PairOutlook fresh;                   ///< a new pair with 12 mm in front of the longer foot
  int look_again = 0;                  ///< days from the latest visit on
};

/// Space in front of the longer foot in a new pair: at least 12 mm (Maier, secondary source).
constexpr Millimetres fresh_space{12};

/// The outlook at the latest of a child's visits, `visits.back()`; with several, they have dates,
/// earliest first. The own rate is used as soon as its doubt is smaller than that of the table for
/// the age (`doubt_of_usual_growth`), if it is above 0. To measure again: at the usual interval of
/// the age, or on the earliest day on which the pair may be outgrown, whichever comes first.
/// Nothing where the age is not known. Precondition: a foot was measured standing.
std::optional<ChildOutlook> child_outlook(std::span<const Visit> visits, const ToeWindow& window);

}  // namespace heelrule
