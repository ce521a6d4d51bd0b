// Which reading is worth taking again: whose doubt makes most of the doubt of the result.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "engine/doubt/draws.hpp"
#include "engine/doubt/effect_sums.hpp"

namespace heelrule {

/// Of what the variance is shared out.
enum class Target : std::uint8_t {
  grade,  ///< the place of the grade among the grades, caps obeyed
  score,  ///< points; where the grade hardly varies
};

/// The effect of each of `readings` on the grade or score of a record, in their order; what is not
/// among them is held as recorded. Worked out from some 33,000 rows in all, the same on every
/// machine; a share is known to within a few hundredths.
std::vector<Effect> effects(const Program& program, const Inspection& inspection,
                            std::span<const DoubtfulReading> readings, Target target);

}  // namespace heelrule
