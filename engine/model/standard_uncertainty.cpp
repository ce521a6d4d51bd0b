#include "engine/model/standard_uncertainty.hpp"

#include <array>
#include <cmath>

namespace heelrule {
namespace {

constexpr double normal_quantile = 1.959963984540054;  // 97.5 % lie below

// The t distribution's 97.5 % quantile for 1, 2, … degrees of freedom: table G.2 of JCGM 100 with
// one digit more.
constexpr std::array<double, 30> t_quantiles{
    12.7062, 4.3027, 3.1824, 2.7764, 2.5706, 2.4469, 2.3646, 2.3060, 2.2622, 2.2281,
    2.2010,  2.1788, 2.1604, 2.1448, 2.1314, 2.1199, 2.1098, 2.1009, 2.0930, 2.0860,
    2.0796,  2.0739, 2.0687, 2.0639, 2.0595, 2.0555, 2.0518, 2.0484, 2.0452, 2.0423};

// Beyond the table the first terms of its expansion are as good (Abramowitz and Stegun, 26.7.5).
double t_quantile(double freedom) {
  if (freedom <= t_quantiles.size()) {
    return t_quantiles[static_cast<std::size_t>(freedom) - 1];
  }
  const double z = normal_quantile;
  const double cube = z * z * z;
  return z + (cube + z) / (4 * freedom) +
         (5 * cube * z * z + 16 * cube + 3 * z) / (96 * freedom * freedom);
}

// The variance of the mean of the readings, by their scatter.
double variance_of_mean(const Readings& readings) {
  const auto count = static_cast<double>(readings.stored.size());
  const double centre = mean(readings);
  double squares = 0;
  for (const double reading : readings.stored) {
    squares += (reading - centre) * (reading - centre);
  }
  return squares / (count - 1) / count;
}

}  // namespace

double standard_uncertainty(const Readings& readings, const MeasureKind& measure) {
  const double of_trait = measure.doubt ? measure.doubt->value.stored : 0;
  const double of_one = readings.doubt.value_or(of_trait);
  const double step = measure.resolution ? measure.resolution->value.stored : 0;
  const double known = of_one * of_one + step * step / 12;
  if (readings.stored.size() < 2) {
    return std::sqrt(known);
  }
  const double scatter = variance_of_mean(readings);
  if (scatter == 0) {
    return std::sqrt(known);
  }
  const double all = known + scatter;
  const double share = all / scatter;
  const double freedom =
      std::floor(share * share * static_cast<double>(readings.stored.size() - 1));
  return std::sqrt(all) * t_quantile(freedom) / normal_quantile;
}

double standard_uncertainty(const MeasureKind& measure) {
  return standard_uncertainty(Readings{{0}, measure.unit, std::nullopt, false}, measure);
}

}  // namespace heelrule
