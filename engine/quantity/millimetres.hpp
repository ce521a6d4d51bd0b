// A length in millimetres that cannot be mistaken for a size, an angle or a bare number.
#pragma once

#include <compare>

namespace heelrule {

/// A length, or a difference of two lengths, in mm. Nothing turns into one by itself, and `value`
/// is the only way out.
class Millimetres {
 public:
  constexpr Millimetres() = default;
  constexpr explicit Millimetres(double value) : value_(value) {}

  constexpr double value() const { return value_; }

  friend constexpr auto operator<=>(Millimetres, Millimetres) = default;

  friend constexpr Millimetres operator+(Millimetres a, Millimetres b) {
    return Millimetres(a.value_ + b.value_);
  }
  friend constexpr Millimetres operator-(Millimetres a, Millimetres b) {
    return Millimetres(a.value_ - b.value_);
  }
  friend constexpr Millimetres operator*(double times, Millimetres a) {
    return Millimetres(times * a.value_);
  }
  /// How often `b` goes into `a`: 4 mm are 0.8 steps of 5 mm.
  friend constexpr double operator/(Millimetres a, Millimetres b) { return a.value_ / b.value_; }

 private:
  double value_ = 0;
};

/// The feet that something is made for, both ends included.
struct FootRange {
  Millimetres shortest;
  Millimetres longest;

  /// False for a length that is not a number.
  constexpr bool holds(Millimetres foot) const { return shortest <= foot && foot <= longest; }

  bool operator==(const FootRange&) const = default;
};

}  // namespace heelrule
