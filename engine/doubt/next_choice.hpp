// Every way to choose some of several things.
#pragma once

#include <cstddef>
#include <vector>

namespace heelrule {

/// The first `size` of several things, by their indices: 0, 1, ….
std::vector<std::size_t> first_choice(std::size_t size);

/// Moves `chosen` on to the next choice of as many out of `count`, in the order in which a person
/// would list them; false after the last, which then stays. Precondition: the indices rise, and lie
/// below `count`.
///
///     of 4:  0 1 -> 0 2 -> 0 3 -> 1 2 -> 1 3 -> 2 3
bool next_choice(std::vector<std::size_t>& chosen, std::size_t count);

}  // namespace heelrule
