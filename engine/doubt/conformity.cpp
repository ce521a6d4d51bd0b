#include "engine/doubt/conformity.hpp"

#include <algorithm>
#include <boost/math/policies/policy.hpp>
#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <limits>
#include <numbers>

namespace heelrule {
namespace {

namespace policies = boost::math::policies;

// Nothing throws here, and no value is out of the function's reach.
using Quiet = policies::policy<
    policies::domain_error<policies::ignore_error>, policies::pole_error<policies::ignore_error>,
    policies::overflow_error<policies::ignore_error>,
    policies::evaluation_error<policies::ignore_error>, policies::promote_double<false>>;

constexpr double infinity = std::numeric_limits<double>::infinity();

// Beyond this many standard uncertainties no double between 0 and 1 tells the share from 0.
constexpr double farthest = 40;

double normal_share_below(double standard) {
  const double within = std::clamp(standard, -farthest, farthest);
  return boost::math::erfc(-within / std::numbers::sqrt2, Quiet()) / 2;
}

}  // namespace

double chance_below(double value, double uncertainty, double limit) {
  if (limit == infinity) {
    return 1;
  }
  if (uncertainty == 0) {
    return value < limit ? 1 : 0;
  }
  return normal_share_below((limit - value) / uncertainty);
}

double chance_within(double value, double uncertainty, double low, double high) {
  const bool is_above = low > value;
  // Of two small shares in the upper tail the difference is taken in the lower one, where it is not
  // lost to rounding.
  return is_above && uncertainty > 0
             ? chance_below(-value, uncertainty, -low) - chance_below(-value, uncertainty, -high)
             : chance_below(value, uncertainty, high) - chance_below(value, uncertainty, low);
}

std::vector<double> band_chances(const CreditScale& scale, double value, double uncertainty) {
  std::vector<double> chances;
  double low = -infinity;
  for (const double threshold : scale.thresholds) {
    chances.push_back(chance_within(value, uncertainty, low, threshold));
    low = threshold;
  }
  chances.push_back(chance_within(value, uncertainty, low, infinity));
  return chances;
}

std::optional<std::size_t> guarded_band(const CreditScale& scale, double value, double guard) {
  const std::size_t own = scale.band(value);
  const std::size_t first = scale.band(value - guard);
  const std::size_t last = scale.band(value + guard);
  const auto fails = [&](std::size_t band) {
    return !scale.credits[band].is_ramp() && scale.credits[band].from == 0;
  };
  if (fails(own)) {
    return std::nullopt;
  }
  for (std::size_t away = 1; own + away <= last || own >= first + away; ++away) {
    if (own >= first + away && fails(own - away)) {
      return own - away;
    }
    if (own + away <= last && fails(own + away)) {
      return own + away;
    }
  }
  return std::nullopt;
}

}  // namespace heelrule
