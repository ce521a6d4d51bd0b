#include "engine/fitting/own_growth.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "engine/fitting/growth.hpp"
#include "engine/fitting/line_fit.hpp"
#include "engine/quantity/calendar_date.hpp"

namespace heelrule {
namespace {

bool every_visit_has(std::span<const Visit> visits, Side side) {
  return std::all_of(visits.begin(), visits.end(),
                     [&](const Visit& visit) { return visit.foot(side).length.has_value(); });
}

Measured mean_length(const Visit& visit) {
  const Measured& left = *visit.left.length;
  const Measured& right = *visit.right.length;
  return {0.5 * (left.value + right.value),
          Millimetres(std::hypot(left.doubt.value(), right.doubt.value()) / 2)};
}

}  // namespace

std::optional<OwnGrowth> own_growth(std::span<const Visit> visits) {
  const bool left = every_visit_has(visits, Side::left);
  const bool right = every_visit_has(visits, Side::right);
  if (visits.size() < 2 || (!left && !right)) {
    return std::nullopt;
  }
  std::vector<LinePoint> points;
  for (const Visit& visit : visits) {
    const Measured length =
        left && right ? mean_length(visit) : *visit.foot(left ? Side::left : Side::right).length;
    if (!(length.doubt > Millimetres(0))) {
      return std::nullopt;
    }
    points.push_back({days_between(*visits.back().date, *visit.date) / days_in_a_month,
                      length.value.value(), length.doubt.value()});
  }
  const auto line = fit_line(points);
  if (!line) {
    return std::nullopt;
  }
  const double freedom = static_cast<double>(points.size()) - 2;
  const double ratio = freedom > 0 ? std::max(1.0, line->chi_squared / freedom) : 1.0;
  OwnGrowth own;
  own.a_month = line->slope;
  own.doubt = line->slope_doubt * std::sqrt(ratio);
  own.covariance = line->covariance * ratio;
  own.visits = points.size();
  own.months = -points.front().x;
  own.both_feet = left && right;
  own.scatters = ratio > 1;
  return own;
}

}  // namespace heelrule
