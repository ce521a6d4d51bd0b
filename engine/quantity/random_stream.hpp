// Numbers that look random, and are the same on every machine and in every order of asking. Where
// one owner takes numbers one after the other, quantity/random_sequence.hpp is simpler.
#pragma once

#include <array>
#include <cstdint>

namespace heelrule {

/// Where in a stream to look. What each word of it counts is for the caller to say.
using RandomCounter = std::array<std::uint32_t, 4>;

/// Which stream: its seed.
using RandomKey = std::array<std::uint32_t, 2>;

using RandomWords = std::array<std::uint32_t, 4>;

/// The four words at a place of a stream, each of them any of the 2^32 with the same chance. There
/// is no state, so draws may be asked for again, in any order and by any number of threads: for
/// readings in doubt, whose draws each have a number of their own. Philox4x32-10 of Salmon, Moraes,
/// Dror and Shaw, Parallel random numbers: as easy as 1, 2, 3, SC11 (2011).
///
///     random_words({0, 0, 0, 0}, {0, 0})  ->  6627e8d5 e169c58d bc57ac4c 9b00dbd8
RandomWords random_words(RandomCounter counter, RandomKey key);

/// A word as a number strictly between 0 and 1: the middle of its step of 2^-32.
constexpr double open_fraction(std::uint32_t word) {
  return (static_cast<double>(word) + 0.5) / 4294967296.0;
}

}  // namespace heelrule
