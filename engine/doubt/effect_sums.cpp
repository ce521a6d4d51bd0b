#include "engine/doubt/effect_sums.hpp"

#include <algorithm>

namespace heelrule {
namespace {

double square(double value) { return value * value; }

}  // namespace

void EffectSums::add(double of_first, double of_second, double of_mixed) {
  count_ += 1;
  sum_ += of_first + of_second;
  squares_ += square(of_first) + square(of_second);
  from_first_ += square(of_first - of_mixed);
  from_second_ += square(of_second - of_mixed);
}

Effect EffectSums::effect() const {
  if (count_ == 0) {
    return {};
  }
  const double values = 2 * count_;
  const double variance = squares_ / values - square(sum_ / values);
  // What a sum of equal squares leaves by rounding is no variance.
  if (variance <= 1e-12 * (squares_ / values)) {
    return {};
  }
  const auto share = [&](double part) { return std::clamp(part / variance, 0.0, 1.0); };
  const double total = share(from_first_ / values);
  return {std::min(share(variance - from_second_ / values), total), total};
}

}  // namespace heelrule
