// Visits of two feet, for the tests of this floor.
#pragma once

#include <string_view>

#include "engine/fitting/visit.hpp"
#include "engine/quantity/calendar_date.hpp"

namespace heelrule {

/// A length with a doubt of 1 mm, or another.
inline Measured about(double value, double doubt = 1) {
  return {Millimetres(value), Millimetres(doubt)};
}

/// Two feet, measured standing.
inline Visit two_feet(double left, double right, double doubt = 1) {
  Visit visit;
  visit.left.length = about(left, doubt);
  visit.right.length = about(right, doubt);
  return visit;
}

/// The same on a day.
inline Visit two_feet_on(std::string_view date, double left, double right, double doubt = 1) {
  Visit visit = two_feet(left, right, doubt);
  visit.date = find_date(date);
  return visit;
}

}  // namespace heelrule
