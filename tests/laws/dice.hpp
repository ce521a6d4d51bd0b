// Chance that falls the same on every machine.
#pragma once

#include <cstdint>
#include <vector>

namespace heelrule {

/// Numbers drawn by the splitmix64 generator (Steele, Lea and Flood 2014; its constants are in the
/// public domain).
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}

  /// A whole number below `sides`. Precondition: `sides` is not 0.
  std::size_t below(std::size_t sides) { return static_cast<std::size_t>(next() % sides); }

  /// Yes, once in `times` on average.
  bool one_in(std::size_t times) { return below(times) == 0; }

  /// One of a list that is not empty.
  template <class T>
  const T& pick(const std::vector<T>& list) {
    return list[below(list.size())];
  }

  /// Puts a list into any order.
  template <class T>
  void shuffle(std::vector<T>& list) {
    for (std::size_t i = list.size(); i > 1; --i) {
      std::swap(list[i - 1], list[below(i)]);
    }
  }

 private:
  std::uint64_t next() {
    state_ += 0x9E3779B97F4A7C15U;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
    return z ^ (z >> 31U);
  }

  std::uint64_t state_;
};

}  // namespace heelrule
