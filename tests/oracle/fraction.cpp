#include "tests/oracle/fraction.hpp"

#include <cmath>

namespace heelrule {
namespace {

constexpr std::int64_t billion = 1'000'000'000;

}  // namespace

Fraction::Wide Fraction::times(Wide a, Wide b) {
  Wide product = 0;
  if (__builtin_mul_overflow(a, b, &product)) {
    throw Undecided("a fraction grew too long");
  }
  return product;
}

Fraction::Wide Fraction::plus(Wide a, Wide b) {
  Wide sum = 0;
  if (__builtin_add_overflow(a, b, &sum)) {
    throw Undecided("a fraction grew too long");
  }
  return sum;
}

Fraction::Wide Fraction::floor(Wide over, Wide under) {
  return over / under - (over % under < 0 ? 1 : 0);
}

Fraction Fraction::lowest(Wide over, Wide under) {
  Wide a = over < 0 ? -over : over;
  Wide b = under < 0 ? -under : under;
  while (b != 0) {
    const Wide rest = a % b;
    a = b;
    b = rest;
  }
  Fraction result;
  result.over_ = (under < 0 ? -over : over) / a;
  result.under_ = (under < 0 ? -under : under) / a;
  return result;
}

Fraction Fraction::ratio(std::int64_t over, std::int64_t under) { return lowest(over, under); }

Fraction Fraction::of(double value) {
  if (!(std::fabs(value) < 9e9)) {
    throw Undecided("a fraction grew too long");
  }
  return ratio(std::llround(value * 1e9), billion);
}

Fraction Fraction::operator-() const { return Fraction(0) - *this; }

Fraction operator+(const Fraction& a, const Fraction& b) {
  return Fraction::lowest(
      Fraction::plus(Fraction::times(a.over_, b.under_), Fraction::times(b.over_, a.under_)),
      Fraction::times(a.under_, b.under_));
}

Fraction operator-(const Fraction& a, const Fraction& b) { return a + b * Fraction(-1); }

Fraction operator*(const Fraction& a, const Fraction& b) {
  return Fraction::lowest(Fraction::times(a.over_, b.over_), Fraction::times(a.under_, b.under_));
}

Fraction operator/(const Fraction& a, const Fraction& b) {
  return Fraction::lowest(Fraction::times(a.over_, b.under_), Fraction::times(a.under_, b.over_));
}

std::strong_ordering operator<=>(const Fraction& a, const Fraction& b) {
  const auto left = Fraction::times(a.over_, b.under_);
  const auto right = Fraction::times(b.over_, a.under_);
  return left < right   ? std::strong_ordering::less
         : right < left ? std::strong_ordering::greater
                        : std::strong_ordering::equal;
}

Fraction Fraction::rounded_up(std::int64_t steps) const {
  const Wide doubled = plus(times(times(over_, steps), 2), under_);
  return lowest(floor(doubled, times(under_, 2)), steps);
}

Fraction Fraction::settled() const {
  const Fraction nearest = rounded_up(billion);
  if (nearest - *this == ratio(1, 2 * billion)) {
    throw Undecided("half way between two billionths");
  }
  return nearest;
}

double Fraction::value() const {
  return static_cast<double>(static_cast<long double>(over_) / static_cast<long double>(under_));
}

}  // namespace heelrule
