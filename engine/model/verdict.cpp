#include "engine/model/verdict.hpp"

#include <algorithm>

#include "engine/model/rule.hpp"

namespace heelrule {
namespace {

constexpr double per_point = 10'000;  // full credit is a hundred points

}  // namespace

std::optional<double> Score::points() const {
  return weight > 0 ? std::optional(earned / weight / per_point) : std::nullopt;
}

double Score::lowest_points() const {
  const double all = weight + open_weight;
  return all > 0 ? earned / all / per_point : 0;
}

double Score::highest_points() const {
  const double all = weight + open_weight;
  return all > 0 ? highest_earned() / all / per_point : 100;
}

double Score::highest_earned() const { return earned + open_weight * full_credit; }

bool Verdict::refers() const {
  return !referrals.empty() ||
         std::any_of(safety.begin(), safety.end(), [](const SafetyAnswer& a) { return a.yes; });
}

}  // namespace heelrule
