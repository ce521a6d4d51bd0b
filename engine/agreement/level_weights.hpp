// How much two levels of a scale agree.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace heelrule {

/// How near misses count.
enum class Weighting : std::uint8_t {
  unweighted,  ///< only the same level agrees
  linear,      ///< 1 − |i − j| / (levels − 1)
  quadratic,   ///< 1 − (i − j)² / (levels − 1)²
};

/// A square table: 1 for full agreement of two levels, 0 for none. Symmetric, 1 on the diagonal.
class LevelWeights {
 public:
  /// Levels in order, each as far from the next as any other. Precondition: `levels` > 0.
  LevelWeights(std::size_t levels, Weighting weighting);

  /// Weights chosen by hand, row by row. Precondition: `levels`² of them, symmetric.
  LevelWeights(std::size_t levels, std::vector<double> table)
      : levels_(levels), table_(std::move(table)) {}

  std::size_t levels() const { return levels_; }
  double at(std::size_t one, std::size_t other) const { return table_[one * levels_ + other]; }

  /// The sum of all weights.
  double sum() const;

 private:
  std::size_t levels_;
  std::vector<double> table_;
};

}  // namespace heelrule
