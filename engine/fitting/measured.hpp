// A length as measured: its value, and how far it can be trusted.
#pragma once

#include "engine/model/inspection.hpp"
#include "engine/model/standard_uncertainty.hpp"
#include "engine/model/trait.hpp"
#include "engine/quantity/millimetres.hpp"

namespace heelrule {

/// A length with its standard uncertainty. Two of them either way hold the true length about 19
/// times in 20 (see `coverage_factor`).
struct Measured {
  Millimetres value;
  Millimetres doubt;  ///< 0 or more

  /// The ends of what is meant by "give or take".
  Millimetres lowest() const { return value - coverage_factor * doubt; }
  Millimetres highest() const { return value + coverage_factor * doubt; }

  bool operator==(const Measured&) const = default;

  /// The difference of two lengths that were measured apart: doubts add up by their squares (JCGM
  /// 100, 5.1.2).
  ///
  ///     246 ± 1 mm - 243 ± 1 mm  ->  3 ± 1.414 mm
  friend Measured operator-(const Measured& a, const Measured& b);
};

/// The mean of the readings of a length, with its standard uncertainty (see
/// model/standard_uncertainty.hpp).
///
///     246, 247, 246 mm, one reading good to 1 mm  ->  246.333 ± 1.060 mm
Measured measured(const Readings& readings, const MeasureKind& measure);

}  // namespace heelrule
