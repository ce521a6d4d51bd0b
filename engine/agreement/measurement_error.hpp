// How far repeated measurements of one thing scatter.
#pragma once

#include "engine/agreement/mean_squares.hpp"

namespace heelrule {

/// All in the unit of the measurements, but for the two shares.
struct MeasurementError {
  double readings = 0;           ///< of subjects with two or more
  Estimate technical;            ///< technical error of measurement: the scatter within subjects
  double relative = unknown;     ///< that as a share of the mean of all readings
  double reliability = unknown;  ///< 1 − technical² / variance of all readings
  double repeatability =
      unknown;  ///< 1.96 · √2 · technical: two readings differ by more 1 in 20 times

  Estimate agreement_error;    ///< standard error of measurement, differences of observers included
  Estimate consistency_error;  ///< the same without them
  Estimate agreement_change;   ///< smallest detectable change, 1.96 · √2 · agreement_error
  Estimate consistency_change;  ///< 1.96 · √2 · consistency_error
};

/// The technical error is √(Σ d² / 2n) for pairs, and in general the root of the mean variance
/// within subjects, each weighted with its readings less one (Norton and Olds, Anthropometrica;
/// secondary source); readings may be missing. The standard errors of measurement come from the
/// mean squares of the subjects that everybody measured: agreement √(σ² of observers + σ²
/// residual), consistency √(σ² residual) (de Vet and others 2006, J Clin Epidemiol 59:1033-1039),
/// and are unknown where there is none. A negative variance of observers counts as 0.
///
/// Intervals are those of a variance (chi squared); where observers' differences are part of it,
/// they come from resampling.
MeasurementError measurement_error(const Ratings& ratings);

/// The technical error alone; unknown where no subject has two readings.
double technical_error(const Ratings& ratings);

}  // namespace heelrule
