// The middle of several numbers.
#pragma once

#include <vector>

namespace heelrule {

/// The number with as many below it as above; of an even count the mean of the two in the middle.
/// Precondition: there is one, and all are finite.
///
///     median({9, 4, 5})     ->  5
///     median({9, 4, 5, 6})  ->  5.5
double median(std::vector<double> numbers);

}  // namespace heelrule
