#include "engine/quantity/random_sequence.hpp"

namespace heelrule {

std::uint64_t RandomSequence::next() {
  state_ += 0x9E3779B97F4A7C15U;
  std::uint64_t mixed = state_;
  mixed = (mixed ^ (mixed >> 30U)) * 0xBF58476D1CE4E5B9U;
  mixed = (mixed ^ (mixed >> 27U)) * 0x94D049BB133111EBU;
  return mixed ^ (mixed >> 31U);
}

// What is left over at the upper end would favour small numbers, and is drawn again.
std::size_t RandomSequence::below(std::size_t count) {
  const std::uint64_t most = UINT64_MAX - UINT64_MAX % count;
  std::uint64_t drawn = next();
  while (drawn >= most) {
    drawn = next();
  }
  return static_cast<std::size_t>(drawn % count);
}

double RandomSequence::share() { return static_cast<double>(next() >> 11U) * 0x1p-53; }

}  // namespace heelrule
