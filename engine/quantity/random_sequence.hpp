// Random numbers one after the other, the same on every machine. Where a draw is asked for by its
// number, in any order, take quantity/random_stream.hpp instead.
#pragma once

#include <cstddef>
#include <cstdint>

namespace heelrule {

/// SplitMix64 (Steele, Lea and Flood 2014, doi 10.1145/2660193.2660195; the constants are those of
/// the public domain code by S. Vigna). The seed alone decides every number that follows. For
/// resampling and made-up data, where one owner takes all numbers in order and how many it takes
/// depends on what they are; nothing that is to stay secret may come from it.
class RandomSequence {
 public:
  explicit RandomSequence(std::uint64_t seed) : state_(seed) {}

  /// The next 64 bits.
  std::uint64_t next();

  /// A whole number from 0 to `count` − 1, each as likely as the others. Precondition: `count` > 0.
  std::size_t below(std::size_t count);

  /// A number from 0 to below 1, in steps of 2^-53.
  double share();

 private:
  std::uint64_t state_;
};

}  // namespace heelrule
