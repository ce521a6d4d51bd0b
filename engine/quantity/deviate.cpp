#include "engine/quantity/deviate.hpp"

#include <array>
#include <cmath>
#include <cstddef>

namespace heelrule {
namespace {

// A quotient of two polynomials, lowest power first; that below the line begins with 1.
struct Quotient {
  std::array<double, 8> above;
  std::array<double, 7> below;

  double operator()(double x) const {
    double numerator = above[7];
    double denominator = below[6];
    for (std::size_t i = 7; i-- > 0;) {
      numerator = numerator * x + above[i];
      denominator = denominator * x + (i > 0 ? below[i - 1] : 1.0);
    }
    return numerator / denominator;
  }
};

constexpr Quotient middle{
    {3.3871328727963666080, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
     45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727},
    {42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867,
     39307.89580009271061, 28729.085735721942674, 5226.495278852545925}};

constexpr Quotient tail{
    {1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
     1.27045825245236838258, 0.24178072517745061177, 0.0227238449892691845833,
     7.7454501427834140764e-4},
    {2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459,
     0.0151986665636164571966, 5.475938084995344946e-4, 1.05075007164441684324e-9}};

constexpr Quotient far_tail{
    {6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123,
     0.026532189526576123093, 0.0012426609473880784386, 2.71155556874348757815e-5,
     2.01033439929228813265e-7},
    {0.59983220655588793769, 0.13692988092273580531, 0.0148753612908506148525,
     7.868691311456132591e-4, 1.8463183175100546818e-5, 1.4215117583164458887e-7,
     2.04426310338993978564e-15}};

// The library's logarithm may differ in its last bit from machine to machine. This is the series
// 2 (t + t³/3 + t⁵/5 + …) with t = (m - 1) / (m + 1), where m lies within √2 of 1.
double logarithm(double value) {
  constexpr double root_of_half = 0.70710678118654752440;
  constexpr double logarithm_of_two = 0.69314718055994530942;
  constexpr int terms = 12;  // t² is below 0.0295, so the next term is below 10^-18
  int exponent = 0;
  double mantissa = std::frexp(value, &exponent);
  if (mantissa < root_of_half) {
    mantissa *= 2;
    --exponent;
  }
  const double t = (mantissa - 1) / (mantissa + 1);
  const double square = t * t;
  double sum = 0;
  for (int i = terms; i-- > 0;) {
    sum = sum * square + 1.0 / (2 * i + 1);
  }
  return exponent * logarithm_of_two + 2 * t * sum;
}

}  // namespace

double normal_deviate(double fraction) {
  const double from_middle = fraction - 0.5;
  if (std::fabs(from_middle) <= 0.425) {
    return from_middle * middle(0.180625 - from_middle * from_middle);
  }
  const double outside = from_middle < 0 ? fraction : 1 - fraction;
  const double depth = std::sqrt(-logarithm(outside));
  const double size = depth <= 5 ? tail(depth - 1.6) : far_tail(depth - 5);
  return from_middle < 0 ? -size : size;
}

}  // namespace heelrule
