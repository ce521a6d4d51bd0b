#include "engine/fitting/measured.hpp"

#include <cmath>

#include "engine/quantity/settle.hpp"

namespace heelrule {

Measured operator-(const Measured& a, const Measured& b) {
  return {Millimetres(settled(a.value.value() - b.value.value())),
          Millimetres(std::hypot(a.doubt.value(), b.doubt.value()))};
}

Measured measured(const Readings& readings, const MeasureKind& measure) {
  return {Millimetres(mean(readings)), Millimetres(standard_uncertainty(readings, measure))};
}

}  // namespace heelrule
