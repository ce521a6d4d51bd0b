// What must be said beside the coefficients, so that nobody misreads them.
#pragma once

#include <variant>
#include <vector>

#include "engine/agreement/coefficient.hpp"

namespace heelrule {

/// So few subjects that the intervals say little. Common practice: below 10 nothing is sure, and
/// studies of agreement ask for 30 and more.
struct FewSubjects {
  double subjects = 0;
};
constexpr double few_subjects = 10;

/// No subject has two ratings.
struct NobodyPaired {};

/// All ratings are of one level: whether observers can tell levels apart was not put to the test.
struct OneLevelOnly {
  std::size_t level = 0;
};

/// Observers agree often, and kappa is low all the same, because one level is rare: what the two
/// figures are, and what a coefficient says that minds it less (Feinstein and Cicchetti 1990, J
/// Clin Epidemiol 43:543-549).
struct Prevalence {
  double agreement = 0;
  double kappa = 0;
  double ac1 = 0;
  std::size_t common_level = 0;
  double common_share = 0;
};

/// Measurements agree closely, and Krippendorff's alpha (and the intraclass correlation with it) is
/// low all the same, because the subjects hardly differ.
struct AlikeSubjects {
  double alpha = 0;
  double technical_error = 0;
  double subject_deviation = 0;  ///< standard deviation of the subjects' means
};

using Remark = std::variant<FewSubjects, NobodyPaired, OneLevelOnly, Prevalence, AlikeSubjects>;

/// What is to be said of these ratings, `all` being their coefficients. Where a line is drawn
/// between high and low it is a house choice: agreement from 80 %, kappa below 0.6 and AC1 at least
/// 0.2 above it; an alpha below 0.5 with a technical error below 2 % of the mean.
std::vector<Remark> remarks(const ScaledRatings& ratings, const std::vector<Coefficient>& all);

}  // namespace heelrule
