#include "engine/fitting/outgrowing.hpp"

#include <cmath>

#include "engine/fitting/growth.hpp"
#include "engine/quantity/settle.hpp"

namespace heelrule {
namespace {

constexpr int last_day = 3 * 365;

// The first day on which `grown(day)` has come up to the reserve.
template <class Grown>
std::optional<int> first_day(Millimetres reserve, Grown grown) {
  for (int day = 0; day <= last_day; ++day) {
    if (settled(grown(day)) >= reserve.value()) {
      return day;
    }
  }
  return std::nullopt;
}

}  // namespace

Outgrowing outgrown_by_age(const Measured& reserve, double age) {
  const double doubt = coverage_factor * reserve.doubt.value();
  const auto expected = [&](int day) { return usual_growth(age, day, &GrowthPace::expected); };
  const auto apart = [&](int day, double GrowthPace::* pace) {
    return std::hypot(doubt, usual_growth(age, day, pace) - expected(day));
  };
  return {
      first_day(reserve.value,
                [&](int day) { return expected(day) + apart(day, &GrowthPace::fast); }),
      first_day(reserve.value, expected),
      first_day(reserve.value,
                [&](int day) { return expected(day) - apart(day, &GrowthPace::slow); }),
  };
}

Outgrowing outgrown_by_own_rate(const Measured& reserve, const OwnGrowth& own) {
  const auto grown = [&](int day) { return own.a_month * day / days_in_a_month; };
  const auto apart = [&](int day) {
    const double months = day / days_in_a_month;
    const double variance = reserve.doubt.value() * reserve.doubt.value() +
                            months * months * own.doubt * own.doubt + 2 * months * own.covariance;
    return coverage_factor * std::sqrt(variance);
  };
  return {
      first_day(reserve.value, [&](int day) { return grown(day) + apart(day); }),
      first_day(reserve.value, grown),
      first_day(reserve.value, [&](int day) { return grown(day) - apart(day); }),
  };
}

}  // namespace heelrule
