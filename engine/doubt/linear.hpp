// Standard uncertainties that can be worked out on paper.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/doubt/doubtful_reading.hpp"
#include "engine/scoring/block.hpp"

namespace heelrule {

/// The standard uncertainty of every register of a program, stored unit, where it is a sum of
/// multiples of readings: √Σ (c·u)², with the readings that two terms share counted once (JCGM
/// 100:2008, 5.1.3). 0 where no doubt reaches it. Nothing where it is no such sum (a quotient of
/// two readings, the larger of two, a comparison), where a level is in doubt, or where it was not
/// seen: then draws tell. `block` holds the record in row 0, evaluated.
///
///     insole_length - foot_length, with 1 mm each   ->  1.414 mm
std::vector<std::optional<double>> linear_uncertainties(const Program& program, const Block& block,
                                                        std::span<const DoubtfulReading> readings);

}  // namespace heelrule
