// How fast children's feet grow, by age, as far as published studies tell.
#pragma once

#include <span>
#include <string_view>

namespace heelrule {

/// A month is a twelfth of a Julian year, as in quantity/unit.hpp.
constexpr double days_in_a_month = 365.25 / 12;

/// Growth in length, mm a month. Studies and textbooks differ, and children differ more: `slow` and
/// `fast` are the ends of what they give for the age.
struct GrowthPace {
  double slow = 0;
  double expected = 0;
  double fast = 0;
};

/// From an age on.
struct GrowthStage {
  double from_age = 0;  ///< years
  GrowthPace pace;
  std::string_view source;
};

/// All stages, youngest first; the first from birth. A half size is the English one, 4.233 mm.
///
///     0        1.5    2.117  2.822   Gould 1990, half a size in less than 2 months
///     15 months 1.411 1.5    2.117   Gould 1990, half a size in 2 to 3 months
///     2 years  1.058  1.25   1.5     Gould 1990, half a size in 3 to 4 months
///     3 years  0.833  1      1.5     Gould 1990, half a size in 4 months; 10 to 18 mm a year
///     5 years  0.667  0.708  1.25    Cheng 1997, boys 8.5 mm a year; 8 to 15 mm a year
///     12 years 0      0.354  0.708   Cheng 1997, girls grow on to 12 and boys to 15 years
///     15 years 0      0      0       hardly any growth
std::span<const GrowthStage> growth_stages();

/// The stage that an age lies in. An age below 0 counts as 0.
const GrowthStage& growth_stage(double age);

/// What a foot grows in so many days, from an age in years on, in mm; stages that begin on the way
/// are taken into account. `pace` says which column.
///
///     usual_growth(5, 365.25, &GrowthPace::expected)  ->  8.5
double usual_growth(double age, double days, double GrowthPace::* pace);

/// How little the table tells about one child: the standard deviation of a rate that may lie
/// anywhere between slow and fast, (fast - slow) / √12 (JCGM 100, 4.3.7), in mm a month.
double doubt_of_usual_growth(double age);

/// Months until a child's feet should be measured again, at the latest. Secondary sources: toddlers
/// each month, small children each 2 months, early school age each 3, older ones each 4 to 5, and
/// from 13 years each 6.
int months_to_next_measuring(double age);

}  // namespace heelrule
