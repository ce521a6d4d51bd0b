#include "engine/fitting/growth.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace heelrule {
namespace {

constexpr double half_size = 25.4 / 6;
constexpr double year = 12;  // months

// 8.5 mm a year are the 102 mm by which boys' feet grow from 3 to 15 years (Cheng 1997). The ranges
// of 10 to 18 and of 8 to 15 mm a year are those of secondary sources.
constexpr std::array<GrowthStage, 7> stages{{
    {0,
     {1.5, half_size / 2, half_size / 1.5},
     "Gould 1990, half a size in less than 2 months; the slow end is common practice, the fast end "
     "a house choice"},
    {1.25,
     {half_size / 3, 1.5, half_size / 2},
     "Gould 1990, half a size in 2 to 3 months; common practice"},
    {2,
     {half_size / 4, 15 / year, 1.5},
     "Gould 1990, half a size in 3 to 4 months; common practice"},
    {3,
     {10 / year, 1, 18 / year},
     "common practice, near Gould 1990, half a size in 4 months; the range is from secondary "
     "sources"},
    {5,
     {8 / year, 8.5 / year, 15 / year},
     "Cheng 1997, 8.5 mm a year; the range is from secondary sources"},
    {12,
     {0, 8.5 / year / 2, 8.5 / year},
     "Cheng 1997, girls grow on to 12 and boys to 15 years; half the boys' rate is a house choice"},
    {15, {0, 0, 0}, "Cheng 1997, growth is linear up to 15 years in boys and 12 in girls"},
}};

struct Interval {
  double below_age;
  int months;
};

constexpr std::array<Interval, 4> intervals{{{3, 1}, {6, 2}, {9, 3}, {13, 4}}};
constexpr int months_of_teens = 6;

}  // namespace

std::span<const GrowthStage> growth_stages() { return stages; }

const GrowthStage& growth_stage(double age) {
  std::size_t at = stages.size() - 1;
  while (at > 0 && !(age >= stages[at].from_age)) {
    --at;
  }
  return stages[at];
}

double usual_growth(double age, double days, double GrowthPace::* pace) {
  const double end = age + days / days_in_a_month / year;
  double grown = 0;
  for (std::size_t i = 0; i < stages.size(); ++i) {
    const double from = i == 0 ? age : std::max(age, stages[i].from_age);
    const double to = i + 1 < stages.size() ? std::min(end, stages[i + 1].from_age) : end;
    grown += std::max(0.0, to - from) * year * (stages[i].pace.*pace);
  }
  return grown;
}

double doubt_of_usual_growth(double age) {
  const GrowthPace& pace = growth_stage(age).pace;
  return (pace.fast - pace.slow) / std::sqrt(12.0);
}

int months_to_next_measuring(double age) {
  const auto found = std::find_if(intervals.begin(), intervals.end(),
                                  [&](const Interval& one) { return age < one.below_age; });
  return found == intervals.end() ? months_of_teens : found->months;
}

}  // namespace heelrule
