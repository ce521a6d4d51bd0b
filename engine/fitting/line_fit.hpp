// The straight line that fits a few doubtful points best.
#pragma once

#include <optional>
#include <span>

namespace heelrule {

/// A point of which the height is known to within `doubt`, a standard uncertainty above 0.
struct LinePoint {
  double x = 0;
  double y = 0;
  double doubt = 1;
};

/// The line y = `at_zero` + `slope` · x, and the standard uncertainties of its two numbers.
struct LineFit {
  double slope = 0;
  double at_zero = 0;
  double slope_doubt = 0;
  double at_zero_doubt = 0;
  double covariance = 0;   ///< of the two
  double chi_squared = 0;  ///< of the points about the line; 0 of two points
};

/// Least squares, each point weighted with 1 / doubt²; the closed form of textbooks:
///
///     w = 1 / doubt²,  mx = Σ w x / Σ w,  my = Σ w y / Σ w,  S = Σ w (x - mx)²
///     slope = Σ w (x - mx)(y - my) / S,  doubt of it 1 / √S
///     at_zero = my - slope · mx,         doubt of it √(1 / Σ w + mx² / S)
///     covariance of the two              -mx / S
///
/// Nothing for fewer than two points, or where all stand at one x.
///
///     (0, 172 ± 1), (8, 178 ± 1)  ->  slope 0.75 ± 0.177
std::optional<LineFit> fit_line(std::span<const LinePoint> points);

}  // namespace heelrule
