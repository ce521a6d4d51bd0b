// Cohen's kappa, of two observers.
#pragma once

#include <vector>

#include "engine/agreement/chance_corrected.hpp"

namespace heelrule {

/// How two observers' ratings fall together: a row for each level of the first, a column for each
/// level of the second.
class CrossTable {
 public:
  explicit CrossTable(std::size_t levels) : levels_(levels), counts_(levels * levels, 0) {}

  std::size_t levels() const { return levels_; }
  double at(std::size_t first, std::size_t second) const {
    return counts_[first * levels_ + second];
  }
  void add(std::size_t first, std::size_t second, double count) {
    counts_[first * levels_ + second] += count;
  }

  double total() const;
  std::vector<double> first_totals() const;
  std::vector<double> second_totals() const;

 private:
  std::size_t levels_;
  std::vector<double> counts_;
};

/// The subjects that both observers rated, by level.
CrossTable cross_table(const Ratings& ratings, std::size_t first, std::size_t second,
                       std::size_t levels);

struct CohenKappa {
  ChanceCorrected kappa;
  double null_error = unknown;  ///< standard error if the two were independent
  double z = unknown;           ///< kappa in units of it
};

/// Chance is what two observers would agree by who use the levels as often as these two do, and
/// know nothing of each other. Both standard errors are those of Fleiss, Cohen and Everitt 1969
/// (Psychol Bull 72:323-327); the interval is ± 1.96 of the first of them, cut at 1. Source: Cohen
/// 1960 (Educ Psychol Meas 20:37-46), weighted 1968 (Psychol Bull 70:213-220).
CohenKappa cohen_kappa(const CrossTable& table, const LevelWeights& weights);

/// What the two say of each level together: 2 n_kk / (n_k. + n_.k), the share of the ratings of a
/// level in which they meet (Cicchetti and Feinstein 1990, J Clin Epidemiol 43:551-558). Unknown
/// for a level that neither used.
std::vector<double> level_agreement(const CrossTable& table);

/// Why kappa may be low where agreement is high (Byrt, Bishop and Carlin 1993, J Clin Epidemiol
/// 46:423-429).
struct TwoLevelIndices {
  double prevalence = unknown;      ///< (n_00 − n_11) / n: how much more common one level is
  double bias = unknown;            ///< (n_01 − n_10) / n: how much more one observer uses it
  double adjusted_kappa = unknown;  ///< PABAK, 2 · agreement − 1
};

/// Of a table of two levels.
TwoLevelIndices two_level_indices(const CrossTable& table);

}  // namespace heelrule
