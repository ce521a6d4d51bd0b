#include "engine/scoring/grade_reach.hpp"

#include <algorithm>

#include "engine/scoring/check_grades.hpp"

namespace heelrule {
namespace {

std::size_t capped(std::size_t by_score, double cap) {
  return std::max(by_score, static_cast<std::size_t>(cap));
}

}  // namespace

GradeReach grade_reach(const Program& program, const Outcome& outcome) {
  GradeReach reach;
  const auto& bounds = program.grade_bounds;
  if (outcome.weight > 0) {
    reach.by_score = grade_of(bounds, outcome.earned, outcome.weight);
    reach.grade = capped(*reach.by_score, outcome.cap);
  }
  const double all = outcome.weight + outcome.open_weight;
  const double best = outcome.earned + outcome.open_weight * full_credit;
  reach.lowest = capped(all > 0 ? grade_of(bounds, outcome.earned, all) : bounds.size() - 1,
                        outcome.lowest_cap);
  reach.highest = capped(all > 0 ? grade_of(bounds, best, all) : 0, outcome.cap);
  return reach;
}

}  // namespace heelrule
