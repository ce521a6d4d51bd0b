// Where things that are kept by a number find their places.
#pragma once

#include <cstddef>
#include <cstdint>

namespace heelrule {

/// Mixes a number so that those that rise in equal steps lie evenly apart: multiples of the golden
/// ratio do (Knuth, The Art of Computer Programming 3, section 6.4; from memory).
constexpr std::uint64_t scattered(std::uint64_t key) {
  return key * 0x9E3779B97F4A7C15;  // 2^64 over the golden ratio
}

/// The place of a number that is scattered, among 2^`bits`.
constexpr std::size_t place_among(std::uint64_t scattered_key, unsigned bits) {
  return static_cast<std::size_t>(scattered_key >> (64U - bits));
}

}  // namespace heelrule
