// How far two observers' measurements of the same thing lie apart.
#pragma once

#include <span>

#include "engine/agreement/ratings.hpp"

namespace heelrule {

/// Within how many standard deviations of the mean difference 95 % of differences lie. The 1986
/// paper took 2.
constexpr double usual_limit_factor = 1.96;

/// Bland and Altman 1986 (Lancet i:307-310). Differences are first minus second; all in the unit of
/// the measurements. Intervals use Student's t with n − 1 degrees of freedom, and for the limits
/// the standard error √(3 s² / n) of that paper.
struct LimitsOfAgreement {
  double subjects = 0;           ///< which both measured
  Estimate bias;                 ///< the mean difference
  double deviation = unknown;    ///< standard deviation of the differences
  Estimate low;                  ///< bias − factor · deviation
  Estimate high;                 ///< bias + factor · deviation
  double correlation = unknown;  ///< Pearson's r, which says nothing of agreement
};

/// One subject as both saw it.
struct MeasuredPair {
  double first = 0;
  double second = 0;
};

/// First minus second, pair by pair.
std::vector<double> differences(std::span<const MeasuredPair> pairs);

/// Unknown where there are fewer than two pairs.
LimitsOfAgreement limits_of_agreement(std::span<const MeasuredPair> pairs,
                                      double factor = usual_limit_factor);

/// What two observers measured of the subjects that both did.
std::vector<MeasuredPair> measured_pairs(const Ratings& ratings, std::size_t first,
                                         std::size_t second);

/// What one observer measured beside the mean of all others who measured the same.
std::vector<MeasuredPair> pairs_with_others(const Ratings& ratings, std::size_t observer);

/// The standard deviation of differences between single readings of two observers, from that
/// between means of two readings each: √(s_D² + s_1² / 4 + s_2² / 4), s_1 and s_2 the root mean
/// squares of the differences between each one's own readings (the same paper).
double single_reading_deviation(double deviation_of_means, double first_own, double second_own);

}  // namespace heelrule
