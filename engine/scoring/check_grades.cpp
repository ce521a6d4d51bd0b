#include "engine/scoring/check_grades.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "engine/quantity/decimal.hpp"

namespace heelrule {
namespace {

constexpr std::size_t most_combinations = 50'000;

// A sum of findings: weight·credit earned, weight seen, and the lowest grade that a failed must
// leaves.
using Combination = std::tuple<double, double, std::size_t>;

std::vector<GradeBound> bounds_of(const RuleSet& rules) {
  std::vector<GradeBound> bounds;
  bounds.reserve(rules.grades.size());
  for (const Grade& grade : rules.grades) {
    bounds.push_back(grade.from.value);
  }
  return bounds;
}

// Every combination of findings, each rule seen or not; nothing where there are too many, or lines
// between. Sorted lists and not sets, which took half the time of a cold start.
std::optional<std::vector<Combination>> combinations(
    const RuleSet& rules, const std::vector<std::optional<RuleProgram>>& programs) {
  for (std::size_t i = 0; i < rules.rules.size(); ++i) {
    if (programs[i]->scale.has_ramp || rules.rules[i].sides != SideRule::worse) {
      return std::nullopt;
    }
  }
  std::vector<Combination> all{{0, 0, 0}};
  for (std::size_t i = 0; i < rules.rules.size(); ++i) {
    const Rule& rule = rules.rules[i];
    const CreditScale& scale = programs[i]->scale;
    if (all.size() * (scale.credits.size() + 1) > most_combinations) {
      return std::nullopt;
    }
    const std::size_t cap = rule.caps ? rules.find_grade(rule.caps->value).value_or(0) : 0;
    std::vector<Combination> longer = all;
    longer.reserve(all.size() * (scale.credits.size() + 1));
    for (const auto& [earned, weight, capped] : all) {
      for (const Credit& credit : scale.credits) {
        longer.emplace_back(earned + rule.weight.value * credit.from, weight + rule.weight.value,
                            credit.from == 0 ? std::max(cap, capped) : capped);
      }
    }
    std::sort(longer.begin(), longer.end());
    longer.erase(std::unique(longer.begin(), longer.end()), longer.end());
    all.swap(longer);
  }
  return all;
}

std::vector<bool> reached(const RuleSet& rules,
                          const std::vector<std::optional<RuleProgram>>& programs) {
  const std::vector<GradeBound> bounds = bounds_of(rules);
  std::vector<bool> reach(rules.grades.size(), false);
  if (const auto all = combinations(rules, programs)) {
    for (const auto& [earned, weight, cap] : *all) {
      if (weight > 0) {
        reach[std::max(grade_of(bounds, earned, weight), cap)] = true;
      }
    }
    return reach;
  }
  double best = 0;
  double worst = full_credit;
  for (std::size_t i = 0; i < rules.rules.size(); ++i) {
    if (rules.rules[i].caps) {
      reach[rules.find_grade(rules.rules[i].caps->value).value_or(0)] = true;
    }
    if (rules.rules[i].weight.value == 0) {
      continue;  // its credit is no part of any score
    }
    for (const Credit& credit : programs[i]->scale.credits) {
      best = std::max({best, credit.from, credit.to});
      worst = std::min({worst, credit.from, credit.to});
    }
  }
  const std::size_t first = grade_of(bounds, best, 1);
  const std::size_t last = grade_of(bounds, worst, 1);
  for (std::size_t i = first; i <= last; ++i) {
    reach[i] = true;
  }
  return reach;
}

}  // namespace

std::size_t grade_of(const std::vector<GradeBound>& bounds, double earned, double weight) {
  // They fall from grade to grade, so that those not reached are as many as the grades before it;
  // to look at each is quicker than to guess where to stop.
  std::size_t grade = 0;
  for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
    grade += earned < bounds[i] * 10 * weight ? 1 : 0;
  }
  return grade;
}

void check_grades(const RuleSet& rules, const std::vector<std::optional<RuleProgram>>& programs,
                  Diagnostics& diagnostics) {
  bool sound = !rules.grades.empty();
  for (std::size_t i = 0; i < rules.grades.size(); ++i) {
    const Grade& grade = rules.grades[i];
    if (grade.from_unread || (i > 0 && rules.grades[i - 1].from_unread)) {
      sound = false;
      continue;
    }
    if (i > 0 && grade.from.value >= rules.grades[i - 1].from.value) {
      sound = false;
      const bool same = grade.from.value == rules.grades[i - 1].from.value;
      diagnostics.error(
          grade.from.where,
          fmt::format("grade `{}` begins at {}, {} the grade before it", grade.name.value,
                      shortest(grade.from.value / 1000), same ? "as does" : "above"),
          "write the grades from the best to the lowest");
    }
    if (i + 1 == rules.grades.size() && grade.from.value != 0) {
      sound = false;
      diagnostics.error(
          grade.from.where,
          fmt::format("no grade is left for scores below {}", shortest(grade.from.value / 1000)),
          "let the lowest grade begin at 0");
    }
  }
  const bool rules_sound = std::all_of(programs.begin(), programs.end(),
                                       [](const auto& program) { return program.has_value(); });
  const bool any_weight = std::any_of(rules.rules.begin(), rules.rules.end(),
                                      [](const Rule& rule) { return rule.weight.value > 0; });
  if (!sound || !rules_sound || !any_weight || diagnostics.has_errors()) {
    return;
  }
  const std::vector<bool> reach = reached(rules, programs);
  for (std::size_t i = 0; i < reach.size(); ++i) {
    if (!reach[i]) {
      diagnostics.error(rules.grades[i].name.where,
                        fmt::format("no record can reach grade `{}`", rules.grades[i].name.value),
                        "move its boundary, or leave the grade out");
    }
  }
}

}  // namespace heelrule
