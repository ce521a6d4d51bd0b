// The feet themselves in words: how long, how different, and what standing does to them.
#pragma once

#include <string>
#include <vector>

#include "engine/fitting/fitting.hpp"

namespace heelrule {

/// `3.3 ± 2.8 mm`: two standard uncertainties either way.
std::string measured_words(const Measured& length);

/// `256 to 261 mm`.
std::string from_to_words(Millimetres from, Millimetres to);

/// Standing lengths, the difference of the sides, and what each foot does under load, in mm and in
/// whole sizes.
std::vector<std::string> foot_words(const Fitting& fitting);

}  // namespace heelrule
