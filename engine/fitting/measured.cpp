#include "engine/fitting/measured.hpp"

#include <cmath>

#include "engine/quantity/settle.hpp"

namespace heelrule {

Measured operator-(const Measured& a, const Measured& b) {
  return {Millimetres(settled(a.value.value() - b.value.value())),
          Millimetres(std::hypot(a.doubt.value(), b.doubt.value()))};
}

Measured measured(const Readings& readings, Millimetres doubt_of_trait) {
  const double centre = mean(readings);
  const double one_reading = readings.doubt.value_or(doubt_of_trait.value());
  const auto count = static_cast<double>(readings.stored.size());
  if (count < 2) {
    return {Millimetres(centre), Millimetres(one_reading)};
  }
  double squares = 0;
  for (const double reading : readings.stored) {
    squares += (reading - centre) * (reading - centre);
  }
  const double scatter = std::sqrt(squares / (count - 1) / count);
  return {Millimetres(centre), Millimetres(std::hypot(one_reading, scatter))};
}

}  // namespace heelrule
