// Intervals of a proportion.
#pragma once

#include "engine/agreement/estimate.hpp"

namespace heelrule {

/// `found` of `all` with Wilson's score interval (1927, J Am Stat Assoc 22:209-212), which Newcombe
/// 1998 (Stat Med 17:857-872) recommends. Unknown where `all` is 0.
///
///     proportion(81, 263)  ->  0.308, from 0.2553 to 0.3662
Estimate proportion(double found, double all);

/// Wilson's interval with continuity correction (Newcombe 1998, method 4).
Interval corrected_proportion_interval(double found, double all);

/// The exact interval of Clopper and Pearson (1934): never too narrow, often too wide.
Interval exact_proportion_interval(double found, double all);

}  // namespace heelrule
