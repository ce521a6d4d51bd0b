// On which day a growing foot has used up the space in front of it.
#pragma once

#include <optional>

#include "engine/fitting/measured.hpp"
#include "engine/fitting/own_growth.hpp"

namespace heelrule {

/// Days from the measuring on; 0 is that day itself. Nothing: not within three years, beyond which
/// we forecast nothing. Earliest and latest are the ends of "give or take": about 19 times in 20
/// the day lies between them, as far as growth is even, which it is not.
struct Outgrowing {
  std::optional<int> earliest;
  std::optional<int> expected;
  std::optional<int> latest;

  bool operator==(const Outgrowing&) const = default;
};

/// By the table of ages. `reserve` is what is left to grow into, with its doubt u. The first days
/// on which
///
///     expected growth                                   >= reserve   (expected)
///     expected growth + √((2 u)² + (fast - expected)²)  >= reserve   (earliest)
///     expected growth - √((2 u)² + (expected - slow)²)  >= reserve   (latest)
///
/// A reserve of 7 ± 0 mm lasts 4.7 months at 1.5 mm a month, 7 months at 1 mm, and 9.9 months
/// at 8.5 mm a year.
Outgrowing outgrown_by_age(const Measured& reserve, double age);

/// By the child's own rate b ± u_b: the growth in t months is b t, and its doubt √(u² + t² u_b² + 2
/// t · covariance), of which two either way make the earliest and the latest day.
Outgrowing outgrown_by_own_rate(const Measured& reserve, const OwnGrowth& own);

}  // namespace heelrule
