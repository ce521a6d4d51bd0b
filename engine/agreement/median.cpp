#include "engine/agreement/median.hpp"

#include <algorithm>

namespace heelrule {

double median(std::vector<double> numbers) {
  std::sort(numbers.begin(), numbers.end());
  const std::size_t half = numbers.size() / 2;
  return numbers.size() % 2 == 1 ? numbers[half] : (numbers[half - 1] + numbers[half]) / 2;
}

}  // namespace heelrule
