// Figures of agreement in plain sentences.
#pragma once

#include <span>
#include <string>

#include "engine/agreement/coefficient.hpp"
#include "engine/agreement/remark.hpp"

namespace heelrule {

/// A figure with two decimals, or three where it lies so near to 1 that two would claim it: `0.49`,
/// `-0.02`, `0.998`; a dash where it is unknown.
std::string figure_words(double value);

/// `85 %`; never 0 % or 100 % of what is not quite that.
std::string share_words(double share);

/// The figure with its interval, `0.49 (0.39 to 0.59)`.
std::string estimate_words(const Estimate& estimate);

/// What a coefficient of this size says: `Of the agreement that chance would not have given, 49 %
/// was reached.`
std::string meaning_words(const Coefficient& coefficient);

/// What must be said beside the figures. `levels` are the names of the levels.
std::string remark_words(const Remark& remark, std::span<const std::string> levels);

}  // namespace heelrule
