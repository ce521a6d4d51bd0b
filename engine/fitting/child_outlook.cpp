#include "engine/fitting/child_outlook.hpp"

#include <algorithm>
#include <cmath>

#include "engine/fitting/growth.hpp"
#include "engine/quantity/calendar_date.hpp"

namespace heelrule {
namespace {

constexpr double months_in_a_year = 12;

// The age at the latest visit, which an earlier one may have told.
std::optional<double> age_at_last(std::span<const Visit> visits) {
  const Visit& last = visits.back();
  for (std::size_t i = visits.size(); i-- > 0;) {
    const Visit& visit = visits[i];
    if (visit.age) {
      const int since = visit.date && last.date ? days_between(*visit.date, *last.date) : 0;
      return *visit.age + since / days_in_a_month / months_in_a_year;
    }
  }
  return std::nullopt;
}

Measured reserve_in(const Measured& inside, const Measured& foot, const ToeWindow& window) {
  const Measured space = inside - foot;
  return {space.value - window.used_up, space.doubt};
}

// The foot with less left to grow into, of those of which the inside of the shoe was measured.
std::optional<PairOutlook> present_pair(const Visit& visit, const ToeWindow& window) {
  std::optional<PairOutlook> present;
  for (const Side side : both_sides) {
    const FootMeasures& foot = visit.foot(side);
    if (!foot.length || !foot.inside_length) {
      continue;
    }
    const Measured reserve = reserve_in(*foot.inside_length, *foot.length, window);
    if (!present || reserve.value < present->reserve.value) {
      present = PairOutlook{side, reserve, {}};
    }
  }
  return present;
}

PairOutlook fresh_pair(const Visit& visit, const ToeWindow& window) {
  const Side longer = *longer_foot(visit);
  return {longer, {fresh_space - window.used_up, visit.foot(longer).length->doubt}, {}};
}

}  // namespace

std::optional<ChildOutlook> child_outlook(std::span<const Visit> visits, const ToeWindow& window) {
  const auto age = age_at_last(visits);
  if (!age) {
    return std::nullopt;
  }
  ChildOutlook outlook;
  outlook.age = *age;
  outlook.own = visits.size() > 1 ? own_growth(visits) : std::nullopt;
  outlook.by_own_rate =
      outlook.own && outlook.own->a_month > 0 && outlook.own->doubt < doubt_of_usual_growth(*age);
  const auto outgrown = [&](const Measured& reserve) {
    return outlook.by_own_rate ? outgrown_by_own_rate(reserve, *outlook.own)
                               : outgrown_by_age(reserve, *age);
  };
  outlook.present = present_pair(visits.back(), window);
  if (outlook.present) {
    outlook.present->outgrown = outgrown(outlook.present->reserve);
  }
  outlook.fresh = fresh_pair(visits.back(), window);
  outlook.fresh.outgrown = outgrown(outlook.fresh.reserve);
  const bool still_worn = outlook.present && outlook.present->reserve.value > Millimetres(0);
  const Outgrowing& first = still_worn ? outlook.present->outgrown : outlook.fresh.outgrown;
  const auto usual = static_cast<int>(std::floor(months_to_next_measuring(*age) * days_in_a_month));
  outlook.look_again = std::min(usual, first.earliest.value_or(usual));
  return outlook;
}

}  // namespace heelrule
