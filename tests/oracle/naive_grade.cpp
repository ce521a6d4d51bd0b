#include "tests/oracle/naive_grade.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "tests/oracle/naive_reading.hpp"

namespace heelrule {
namespace {

// Credit is counted in whole millionths, as said at `full_credit`.
constexpr std::int64_t millionths = 1'000'000;

Fraction credit_of(double counted) { return Fraction::of(counted) / Fraction(millionths); }

bool lies_in(const Band& band, const Fraction& value) {
  if (!band.cut) {
    return true;
  }
  const Fraction cut = Fraction::of(band.cut->at.stored);
  return value < cut || (band.cut->belongs_below && value == cut);
}

Fraction earned_by_bands(const Rule& rule, const Fraction& value) {
  std::size_t at = 0;
  while (!lies_in(rule.bands[at], value)) {
    ++at;
  }
  const Credit& earns = rule.bands[at].earns.value;
  if (!earns.is_ramp()) {
    return credit_of(earns.from);
  }
  const Fraction low = Fraction::of(rule.bands[at - 1].cut->at.stored);
  const Fraction high = Fraction::of(rule.bands[at].cut->at.stored);
  const Fraction way = (value - low) / (high - low);
  const Fraction exact =
      credit_of(earns.from) + (credit_of(earns.to) - credit_of(earns.from)) * way;
  return exact.rounded_up(millionths);
}

Fraction earned_by_levels(const RuleSet& rules, const Rule& rule, const Fraction& value) {
  const Trait& trait = rules.traits[*rules.find_trait(rule.reads.value)];
  for (const LevelCredit& level : rule.levels) {
    const std::vector<Level>& scale = levels_of(trait.kind);
    std::int64_t place = level.level.value == "yes" ? 1 : 0;
    for (std::size_t i = 0; i < scale.size(); ++i) {
      if (scale[i].name.value == level.level.value) {
        place = static_cast<std::int64_t>(i);
      }
    }
    if (value == Fraction(place)) {
      return credit_of(level.earns.value.from);
    }
  }
  throw std::logic_error("a level that earns nothing");
}

// What each of the sides that count together earns; nothing where it is not seen.
using Credits = std::vector<std::optional<Fraction>>;

Fraction joined(SideRule how, const std::vector<Fraction>& credits) {
  if (how != SideRule::mean) {
    return *std::min_element(credits.begin(), credits.end());
  }
  Fraction sum;
  for (const Fraction& credit : credits) {
    sum = sum + credit;
  }
  return sum / Fraction(static_cast<std::int64_t>(credits.size()));
}

// All credits joined, with `unseen` in the place of those that were not seen.
Fraction joined_with(SideRule how, const Credits& credits, std::int64_t unseen) {
  std::vector<Fraction> whole;
  for (const auto& credit : credits) {
    whole.push_back(credit.value_or(Fraction(unseen)));
  }
  return joined(how, whole);
}

// Decided is what comes out the same, whatever the side that was not seen would earn.
NaiveFinding finding(const Rule& rule, const Credits& credits,
                     const std::optional<Fraction>& applies) {
  NaiveFinding found;
  const Fraction lowest = joined_with(rule.sides, credits, 0);
  const Fraction highest = joined_with(rule.sides, credits, 1);
  if (applies && *applies == 0) {
    found.status = Status::does_not_apply;
  } else if (applies && lowest == highest) {
    found.credit = lowest;
    found.status = lowest == 1 ? Status::pass : lowest == 0 ? Status::fail : Status::part;
  }
  return found;
}

std::size_t grade_for(const RuleSet& rules, const Fraction& points) {
  for (std::size_t i = 0; i < rules.grades.size(); ++i) {
    if (points >= Fraction::of(rules.grades[i].from.value) / Fraction(1000)) {
      return i;
    }
  }
  throw std::logic_error("a score below every grade");
}

class Grading {
 public:
  Grading(const RuleSet& rules, const Inspection& inspection)
      : rules_(rules), reading_(rules, inspection) {}

  NaiveVerdict grade() {
    for (std::size_t i = 0; i < rules_.rules.size(); ++i) {
      judge(i);
    }
    add_up();
    return std::move(verdict_);
  }

 private:
  void judge(std::size_t index) {
    const Rule& rule = rules_.rules[index];
    const std::size_t trait = *rules_.find_trait(rule.reads.value);
    const auto applies = rule.applies ? reading_.formula(*rule.applies) : Fraction(1);
    const auto earned = [&](Side side) -> std::optional<Fraction> {
      const NaiveValue value = reading_.trait(trait, side);
      if (!value) {
        return std::nullopt;
      }
      return rule.bands.empty() ? earned_by_levels(rules_, rule, *value)
                                : earned_by_bands(rule, *value);
    };
    const auto add = [&](Side side, const Credits& credits, std::int64_t shares) {
      NaiveFinding found = finding(rule, credits, applies);
      found.rule = index;
      found.side = side;
      found.weight = Fraction::of(rule.weight.value) / Fraction(1000 * shares);
      verdict_.findings.push_back(found);
    };
    if (!reading_.has_sides(trait)) {
      add(Side::none, {earned(Side::none)}, 1);
    } else if (rule.sides == SideRule::each) {
      add(Side::left, {earned(Side::left)}, 2);
      add(Side::right, {earned(Side::right)}, 2);
    } else {
      add(Side::none, {earned(Side::left), earned(Side::right)}, 1);
    }
  }

  void add_up() {
    Fraction seen;
    Fraction all;
    Fraction earned;
    Fraction lowest;
    Fraction highest;
    std::size_t cap = 0;
    std::size_t lowest_cap = 0;
    bool must_not_seen = false;
    for (const NaiveFinding& found : verdict_.findings) {
      const auto& must = rules_.rules[found.rule].caps;
      const std::size_t leaves = must ? *rules_.find_grade(must->value) : 0;
      if (found.status == Status::does_not_apply) {
        continue;
      }
      if (found.credit) {
        seen = seen + found.weight;
        earned = earned + found.weight * *found.credit;
        cap = found.status == Status::fail ? std::max(cap, leaves) : cap;
      } else if (must) {
        must_not_seen = true;
        lowest_cap = std::max(lowest_cap, leaves);
      }
      all = all + found.weight;
      lowest = lowest + found.weight * found.credit.value_or(Fraction(0));
      highest = highest + found.weight * found.credit.value_or(Fraction(1));
    }
    if (seen > 0) {
      verdict_.points = Fraction(100) * earned / seen;
      verdict_.uncapped = grade_for(rules_, *verdict_.points);
      verdict_.grade = std::max(*verdict_.uncapped, cap);
    }
    verdict_.lowest_points = all > 0 ? Fraction(100) * lowest / all : Fraction(0);
    verdict_.highest_points = all > 0 ? Fraction(100) * highest / all : Fraction(100);
    verdict_.lowest_grade = std::max({grade_for(rules_, verdict_.lowest_points), cap, lowest_cap});
    verdict_.highest_grade = std::max(grade_for(rules_, verdict_.highest_points), cap);
    verdict_.stands =
        verdict_.grade && !must_not_seen && verdict_.lowest_grade == verdict_.highest_grade;
  }

  const RuleSet& rules_;
  NaiveReading reading_;
  NaiveVerdict verdict_;
};

// Sums are whole numbers, or halves and quarters of them, so a double shows them exactly.
Fraction points_of(double earned, double weight) {
  const auto quarters = [](double sum) { return Fraction(static_cast<std::int64_t>(sum * 4)); };
  return Fraction(100) * quarters(earned) / (quarters(weight) * Fraction(millionths));
}

std::string grade_words(const std::optional<std::size_t>& grade) {
  return grade ? fmt::format("{}", *grade) : "none";
}

std::string finding_difference(const Finding& found, const NaiveFinding& naive) {
  if (found.rule != naive.rule || found.side != naive.side) {
    return "another rule or side";
  }
  if (found.status != naive.status) {
    return fmt::format("status {} and not {}", static_cast<int>(found.status),
                       static_cast<int>(naive.status));
  }
  if (Fraction::of(found.weight) != naive.weight * Fraction(1000)) {
    return "another weight";
  }
  if (naive.credit && Fraction::of(found.credit) != *naive.credit * Fraction(millionths)) {
    return fmt::format("credit {} and not {}", found.credit, naive.credit->value());
  }
  return {};
}

}  // namespace

NaiveVerdict naive_grade(const RuleSet& rules, const Inspection& inspection) {
  return Grading(rules, inspection).grade();
}

std::string disagreement(const Verdict& verdict, const NaiveVerdict& naive) {
  if (verdict.findings.size() != naive.findings.size()) {
    return "another number of findings";
  }
  for (std::size_t i = 0; i < naive.findings.size(); ++i) {
    if (auto words = finding_difference(verdict.findings[i], naive.findings[i]); !words.empty()) {
      return fmt::format("finding {}: {}", i, words);
    }
  }
  const Score& score = verdict.score;
  const double all = score.weight + score.open_weight;
  if ((score.weight > 0) != naive.points.has_value() ||
      (naive.points && points_of(score.earned, score.weight) != *naive.points)) {
    return "another score";
  }
  if (all > 0 && (points_of(score.earned, all) != naive.lowest_points ||
                  points_of(score.highest_earned(), all) != naive.highest_points)) {
    return fmt::format("reach {} .. {} and not {} .. {}", score.lowest_points(),
                       score.highest_points(), naive.lowest_points.value(),
                       naive.highest_points.value());
  }
  if (verdict.uncapped != naive.uncapped || verdict.grade != naive.grade) {
    return fmt::format("grade {} and not {}", grade_words(verdict.grade), grade_words(naive.grade));
  }
  if (verdict.lowest_grade != naive.lowest_grade || verdict.highest_grade != naive.highest_grade) {
    return fmt::format("grades {} to {} and not {} to {}", verdict.highest_grade,
                       verdict.lowest_grade, naive.highest_grade, naive.lowest_grade);
  }
  return verdict.stands == naive.stands ? "" : "whether the grade stands";
}

}  // namespace heelrule
