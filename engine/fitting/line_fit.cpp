#include "engine/fitting/line_fit.hpp"

#include <cmath>

namespace heelrule {

std::optional<LineFit> fit_line(std::span<const LinePoint> points) {
  const auto weight = [](const LinePoint& point) { return 1 / (point.doubt * point.doubt); };
  double weights = 0;
  double x_sum = 0;
  double y_sum = 0;
  for (const LinePoint& point : points) {
    weights += weight(point);
    x_sum += weight(point) * point.x;
    y_sum += weight(point) * point.y;
  }
  const double x_mean = x_sum / weights;
  const double y_mean = y_sum / weights;
  double spread = 0;
  double together = 0;
  for (const LinePoint& point : points) {
    spread += weight(point) * (point.x - x_mean) * (point.x - x_mean);
    together += weight(point) * (point.x - x_mean) * (point.y - y_mean);
  }
  if (points.size() < 2 || !(spread > 0)) {
    return std::nullopt;
  }
  LineFit fit;
  fit.slope = together / spread;
  fit.at_zero = y_mean - fit.slope * x_mean;
  fit.slope_doubt = 1 / std::sqrt(spread);
  fit.at_zero_doubt = std::sqrt(1 / weights + x_mean * x_mean / spread);
  fit.covariance = -x_mean / spread;
  for (const LinePoint& point : points) {
    const double off = point.y - fit.at_zero - fit.slope * point.x;
    fit.chi_squared += points.size() > 2 ? weight(point) * off * off : 0;
  }
  return fit;
}

}  // namespace heelrule
