// Exact fractions, so that what a score comes to leaves no room for rounding.
#pragma once

#include <compare>
#include <cstdint>
#include <stdexcept>

namespace heelrule {

/// Thrown where a value cannot be told exactly: it has more digits than a fraction can hold, or
/// lies half way between two values to which it could be settled.
struct Undecided : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// A quotient of two whole numbers of 128 bits, always in lowest terms with a divisor above 0.
/// Throws Undecided where that is not enough.
class Fraction {
 public:
  Fraction(std::int64_t whole = 0) : over_(whole) {}  // NOLINT(google-explicit-constructor)

  /// `over` / `under`. Precondition: `under` is not 0.
  static Fraction ratio(std::int64_t over, std::int64_t under);

  /// The decimal that a double stands for: the nearest multiple of a billionth.
  static Fraction of(double value);

  Fraction operator-() const;
  friend Fraction operator+(const Fraction& a, const Fraction& b);
  friend Fraction operator-(const Fraction& a, const Fraction& b);
  friend Fraction operator*(const Fraction& a, const Fraction& b);
  friend Fraction operator/(const Fraction& a, const Fraction& b);

  friend bool operator==(const Fraction& a, const Fraction& b) = default;
  friend std::strong_ordering operator<=>(const Fraction& a, const Fraction& b);

  /// To the nearest multiple of 1 / `steps`; half way it is the upper one.
  Fraction rounded_up(std::int64_t steps) const;

  /// To the nearest multiple of a billionth. Throws Undecided half way between two.
  Fraction settled() const;

  /// The nearest double, for the tangent and for messages.
  double value() const;

 private:
  __extension__ typedef __int128 Wide;  // NOLINT(modernize-use-using)

  static Wide times(Wide a, Wide b);
  static Wide plus(Wide a, Wide b);
  static Wide floor(Wide over, Wide under);
  static Fraction lowest(Wide over, Wide under);

  Wide over_ = 0;
  Wide under_ = 1;
};

}  // namespace heelrule
