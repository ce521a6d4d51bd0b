#include "engine/agreement/moments.hpp"

namespace heelrule {

Moments moments_of(std::span<const double> numbers) {
  Moments moments;
  moments.count = static_cast<double>(numbers.size());
  for (const double number : numbers) {
    moments.mean += number / moments.count;
  }
  for (const double number : numbers) {
    moments.squares += (number - moments.mean) * (number - moments.mean);
  }
  return moments;
}

}  // namespace heelrule
