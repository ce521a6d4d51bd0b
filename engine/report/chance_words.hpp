// Chances in words, so that none contradicts what is said beside it.
#pragma once

#include <string>

namespace heelrule {

/// A chance from 0 to 1 in whole percent: `62 %`. One that is neither 0 nor 1 is never printed as
/// such: `under 1 %`, `over 99 %`. Where whole percent would lift it to `limit`, which it does not
/// reach, it has one decimal and is cut.
///
///     chance_words(0.9496, 0.95)  ->  "94.9 %"
std::string chance_words(double chance, double limit = 1);

/// A chance as a report for programs gives it: to the nearest millionth.
double printed_chance(double chance);

}  // namespace heelrule
