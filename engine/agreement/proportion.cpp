#include "engine/agreement/proportion.hpp"

namespace heelrule {

Estimate proportion(double found, double all) {
  if (!(all > 0)) {
    return {};
  }
  const double z = normal_quantile(upper_tail);
  const double share = found / all;
  const double centre = share + z * z / (2 * all);
  const double reach = z * std::sqrt(share * (1 - share) / all + z * z / (4 * all * all));
  const double scale = 1 + z * z / all;
  const double low = found == 0 ? 0 : (centre - reach) / scale;
  const double high = found == all ? 1 : (centre + reach) / scale;
  return {share, std::sqrt(share * (1 - share) / all), {low, high}, IntervalBy::score};
}

Interval corrected_proportion_interval(double found, double all) {
  if (!(all > 0)) {
    return {};
  }
  const double z = normal_quantile(upper_tail);
  const double share = found / all;
  const double middle = 2 * all * share + z * z;
  const double scale = 2 * (all + z * z);
  const double below = z * std::sqrt(z * z - 2 - 1 / all + 4 * share * (all * (1 - share) + 1));
  const double above = z * std::sqrt(z * z + 2 - 1 / all + 4 * share * (all * (1 - share) - 1));
  return {found == 0 ? 0 : std::fmax(0, (middle - 1 - below) / scale),
          found == all ? 1 : std::fmin(1, (middle + 1 + above) / scale)};
}

Interval exact_proportion_interval(double found, double all) {
  if (!(all > 0)) {
    return {};
  }
  return {found == 0 ? 0 : beta_quantile(1 - upper_tail, found, all - found + 1),
          found == all ? 1 : beta_quantile(upper_tail, found + 1, all - found)};
}

}  // namespace heelrule
