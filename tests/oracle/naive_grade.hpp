// A second evaluator, slow and obvious: written from the description of the rule language and the
// definitions of credit, score, sides, must and grade alone, over a rule set as written. It shares
// nothing with the engine but the models and the parser of formulas.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/model/verdict.hpp"
#include "tests/oracle/fraction.hpp"

namespace heelrule {

/// The outcome of a rule, or of one side of a rule whose sides count each. Credits are from 0 to 1.
struct NaiveFinding {
  std::size_t rule = 0;
  Side side = Side::none;
  Status status = Status::not_seen;
  Fraction weight;
  std::optional<Fraction> credit;  ///< of pass, part and fail
};

/// A verdict, as far as numbers go. Points are from 0 to 100.
struct NaiveVerdict {
  std::vector<NaiveFinding> findings;
  std::optional<Fraction> points;
  Fraction lowest_points;
  Fraction highest_points;
  std::optional<std::size_t> uncapped;
  std::optional<std::size_t> grade;
  std::size_t lowest_grade = 0;
  std::size_t highest_grade = 0;
  bool stands = false;
};

/// Grades a record. `rules` compiles, and the record was read against it.
NaiveVerdict naive_grade(const RuleSet& rules, const Inspection& inspection);

/// In what the engine's verdict differs from the second evaluator's; empty where they agree. Points
/// are compared as exact fractions.
std::string disagreement(const Verdict& verdict, const NaiveVerdict& naive);

}  // namespace heelrule
