// How far a reading may be from the truth, as one number.
#pragma once

#include "engine/model/inspection.hpp"
#include "engine/model/trait.hpp"

namespace heelrule {

/// How many standard uncertainties on either side of a value hold the true one about 19 times in
/// 20: the coverage factor of JCGM 100:2008 (6.2.1 and annex G).
constexpr double coverage_factor = 2;

/// The standard uncertainty of the mean of `readings` of a measure, in its stored unit; 0 or more.
/// Put together by their squares (JCGM 100:2008, 5.1.2) from
///
///  - the doubt of one reading: the record's, else the trait's `doubt`. It does not shrink with
///    repeats, for an instrument or a habit can be wrong every time (type B, 4.3);
///  - the trait's `resolution`: half a step over √3, since the truth may lie anywhere in the step
///    (4.3.7);
///  - the scatter of repeats, s/√n (type A, 4.2.3).
///
/// Few repeats tell little of their own scatter. So the sum is widened by what the 97.5 % quantile
/// of the t distribution is beyond the normal one, at the effective degrees of freedom of Welch and
/// Satterthwaite (annex G.4, cut to a whole number): 1.96 times the result is half the 95 %
/// interval. 0 where nothing is known.
///
///     one reading, doubt 1 mm                    ->  1 mm
///     one reading, resolution 1 mm               ->  0.288675 mm
///     246, 247, 246 mm, doubt 1 mm               ->  1.0604 mm
///     246, 247, 246 mm, nothing known but these  ->  0.7318 mm
double standard_uncertainty(const Readings& readings, const MeasureKind& measure);

/// The same of any one reading of the measure, of which a record says nothing: by the trait's
/// `doubt` and `resolution` alone.
double standard_uncertainty(const MeasureKind& measure);

}  // namespace heelrule
