// How much of the spread of a result each of its inputs brings about.
#pragma once

#include <cstddef>

namespace heelrule {

/// Shares of the variance of a result (Sobol's indices), 0 to 1.
struct Effect {
  double first = 0;  ///< what would go if this input were known exactly, and nothing else
  double total = 0;  ///< what would be left if all but this input were known exactly

  bool operator==(const Effect&) const = default;
};

/// Adds up results of two independent samples A and B of all inputs, and of A with one input taken
/// from B. The estimators are Jansen's (Computer Physics Communications 117 (1999), 35 to 43; also
/// formulas (c) and (f) of Saltelli and others, the same journal 181 (2010), 259 to 270).
class EffectSums {
 public:
  /// One draw: the result of sample A, of sample B, and of A with this input of B.
  void add(double of_first, double of_second, double of_mixed);

  /// The shares; none where the result never varied. Draws are few, so each share is cut to 0 to 1,
  /// and a first share that chance brought above its total, which is known better, is cut to it.
  Effect effect() const;

 private:
  double count_ = 0;
  double sum_ = 0;
  double squares_ = 0;
  double from_first_ = 0;   // Σ (A − mixed)²
  double from_second_ = 0;  // Σ (B − mixed)²
};

}  // namespace heelrule
