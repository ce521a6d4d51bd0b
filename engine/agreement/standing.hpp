// Who stands apart from the others.
#pragma once

#include <cstdint>
#include <vector>

#include "engine/agreement/ratings.hpp"

namespace heelrule {

/// How one observer's numbers lie beside those of the others who rated the same.
struct Standing {
  std::size_t observer = 0;
  double subjects = 0;
  Estimate bias;             ///< mean difference from the mean of the others
  double spread = 0;         ///< standard deviation of these differences about it
  double others_spread = 0;  ///< the same of the others, together
  double bias_chance = 1;    ///< how likely so great a bias is where nobody differs (two-sided)
  double spread_chance = 1;  ///< how likely so great a spread is where all scatter alike
};

/// Everybody's standing. The bias has the scatter that is common to all for its standard error: of
/// a table without gaps exactly that of an analysis of variance with two ways, (n − 1)(k − 1)
/// degrees of freedom; with gaps nearly so. Spreads are compared by their F ratio. Observers who
/// share fewer than two subjects with others are left out.
std::vector<Standing> standings(const Ratings& numbers);

/// Those whose bias, or whose spread, is beyond what chance gives to one class in twenty (the line
/// is 5 % divided by the number of observers). The furthest is taken out first and the others are
/// laid beside each other again, so that one stray observer makes nobody else look strange. At
/// least three observers are kept.
std::vector<Standing> far_biases(const Ratings& numbers);
std::vector<Standing> far_spreads(const Ratings& numbers);

}  // namespace heelrule
