// How sure it is on which side of a limit the truth lies.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/scoring/program.hpp"

namespace heelrule {

/// The chance that the truth lies below `limit`, where a normal distribution around `value` with
/// this standard uncertainty (0 or more; all in one unit) describes what is known of it: JCGM
/// 106:2012, 7.3, with nothing known before the reading. Without uncertainty it is 0 or 1, and a
/// value at the limit is not below it.
///
///     value -5.47, uncertainty 0.05, limit -5.40  ->  0.919243   (JCGM 106, 7.3: a Zener diode)
double chance_below(double value, double uncertainty, double limit);

/// The chance that the truth lies from `low` to `high` (7.4).
///
///     value 13.6, uncertainty 1.8, from 12.5 to 16.3  ->  0.662630   (motor oil, SAE 40)
double chance_within(double value, double uncertainty, double low, double high);

/// The chance of each band of a scale. They add up to 1.
std::vector<double> band_chances(const CreditScale& scale, double value, double uncertainty);

/// Of a rule that is decided with a guard band of half-width `guard` (stored unit, 0 or more): the
/// nearest band without credit that lies within it, where the reading itself does not fail. Nothing
/// where the reading is accepted (8.3: the acceptance limits lie inside the tolerance limits by the
/// guard band).
///
///     bands below 10 mm earns 0, else 100 %; reading 10.4 mm, guard 1 mm  ->  the first
std::optional<std::size_t> guarded_band(const CreditScale& scale, double value, double guard);

}  // namespace heelrule
