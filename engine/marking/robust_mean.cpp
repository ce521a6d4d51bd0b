#include "engine/marking/robust_mean.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/agreement/median.hpp"

namespace heelrule {
namespace {

constexpr double of_median_distance = 1.483;
constexpr double reach = 1.5;
constexpr double of_moved_deviation = 1.134;
constexpr int most_rounds = 1'000;
constexpr double settled_share = 1e-12;

RobustMean start(std::vector<double> readings) {
  const double middle = median(readings);
  for (double& reading : readings) {
    reading = std::fabs(reading - middle);
  }
  return {middle, of_median_distance * median(std::move(readings))};
}

RobustMean next(const std::vector<double>& readings, const RobustMean& last) {
  const auto count = static_cast<double>(readings.size());
  const double low = last.mean - reach * last.deviation;
  const double high = last.mean + reach * last.deviation;
  double sum = 0;
  for (const double reading : readings) {
    sum += std::clamp(reading, low, high);
  }
  const double mean = sum / count;
  double squares = 0;
  for (const double reading : readings) {
    const double distance = std::clamp(reading, low, high) - mean;
    squares += distance * distance;
  }
  return {mean, of_moved_deviation * std::sqrt(squares / (count - 1))};
}

}  // namespace

RobustMean robust_mean(const std::vector<double>& readings) {
  RobustMean found = start(readings);
  if (readings.size() < 2 || found.deviation == 0) {
    return found;
  }
  for (int round = 0; round < most_rounds; ++round) {
    const RobustMean last = found;
    found = next(readings, last);
    const double moved =
        std::fabs(found.mean - last.mean) + std::fabs(found.deviation - last.deviation);
    if (moved <= settled_share * found.deviation) {
      break;
    }
  }
  return found;
}

}  // namespace heelrule
