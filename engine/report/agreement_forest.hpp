// Figures of agreement below each other, as a picture.
#pragma once

#include <string>
#include <vector>

#include "engine/agreement/estimate.hpp"
#include "engine/drawing/interval_rows.hpp"

namespace heelrule {

/// One figure with its interval, under this name.
IntervalRow forest_row(std::string name, const Estimate& estimate);

/// The rows on a scale from 0, where chance alone would lead, to 1, where all agree; from -0.5
/// where a figure lies below 0.
IntervalRows agreement_forest(std::string title, std::vector<IntervalRow> rows);

}  // namespace heelrule
