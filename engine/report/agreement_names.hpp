// Coefficients of agreement by name: for programs, and for people.
#pragma once

#include <string>
#include <string_view>

#include "engine/agreement/coefficient.hpp"

namespace heelrule {

/// As JSON has it: `gwet_ac1`.
std::string_view key_of(CoefficientName name);
std::string_view key_of(Weighting weighting);
std::string_view key_of(Metric metric);
std::string_view key_of(IntervalBy by);
std::string_view key_of(RatingKind kind);

/// As people read it: `Gwet's AC2, linear weights`.
std::string title_of(const Coefficient& coefficient);

}  // namespace heelrule
