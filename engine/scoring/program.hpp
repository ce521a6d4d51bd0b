// A rule set made ready to run: steps over columns of numbers, and the words that go with the
// results.
//
// A *register* is one column: one number for each row of a batch, and a row is one inspection (or
// one draw, or one alternative). Registers are written once, in order; so after a run every
// register still holds the reason of a finding, and `decide` reads it there.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "engine/formula/expression.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/scoring/phrase.hpp"

namespace heelrule {

using Register = std::uint32_t;
constexpr Register no_register = 0xFFFFFFFF;

/// A number that comes from the row itself; the n-th of them is register n.
struct RowInput {
  Input input;
  Side side = Side::none;

  auto operator<=>(const RowInput&) const = default;
};

/// An input that is a number of a row as it is: most are.
struct PlainInput {
  Register result = 0;
  std::uint32_t place = 0;  ///< as `number_place` gives it
};

struct Constant {
  Register result = 0;
  double value = 0;
};

/// One operation on whole columns.
struct Instruction {
  Operation operation = Operation::constant;
  Register result = 0;
  std::array<Register, 3> operands{no_register, no_register, no_register};
};

/// From values to credit. Band k holds the values v with thresholds[k-1] <= v < thresholds[k]; an
/// inclusive cut point c is the threshold just above c, so that one comparison serves both kinds.
struct CreditScale {
  std::vector<double> thresholds;  ///< one fewer than bands
  std::vector<Credit> credits;     ///< one for each band
  bool has_ramp = false;

  /// The band of a seen value. They are few: to look at all of them is quicker than to search.
  std::size_t band(double value) const {
    std::size_t reached = 0;
    for (const double threshold : thresholds) {
      reached += value >= threshold ? 1 : 0;
    }
    return reached;
  }

  /// What a seen value earns, in whole millionths; half way between two of them it is the upper.
  double credit(double value) const;
};

/// Turns one register of values into one of credit.
struct Judgement {
  Register value = 0;
  Register credit = 0;
  std::uint32_t rule = 0;  ///< whose CreditScale is used
};

/// How a contribution's credits are joined.
enum class Joining : std::uint8_t { single, worse, mean };

/// Which words a contribution can bring up. Those of its rule are said where it does not pass in
/// full, those of a band wherever a value lies in it.
struct Voice {
  bool warns = false;    ///< its rule or a band has a caution or a referral
  bool advises = false;  ///< its rule or a band has advice
};

/// One share of the score: a rule, or one side of a rule whose sides count each.
struct Contribution {
  std::uint32_t rule = 0;
  Side side = Side::none;  ///< of a rule whose sides count each
  Joining joining = Joining::single;
  std::array<Register, 2> credits{no_register, no_register};
  std::array<Register, 2> values{no_register, no_register};  ///< what the credits judge
  Register applies = no_register;                            ///< none: it always applies
  double weight = 0;                                         ///< in thousandths
  std::int32_t cap = -1;  ///< of a must: the grade that remains; -1: no must
  Voice voice;
};

/// Where to find a value on each side: [none, left, right].
using SideRegisters = std::array<Register, 3>;

/// What is known of a trait, for reading its values back.
struct TraitProgram {
  Type type;
  bool has_sides = false;
  Unit unit = Unit::count;  ///< in which a number is printed
  SideRegisters values{no_register, no_register, no_register};
  std::array<std::vector<Register>, 3> needs;  ///< the row inputs behind each value
};

/// The words of a band or of a whole rule.
struct SpokenWords {
  Phrase say;
  Phrase caution;
  Phrase referral;
  Phrase advice;
};

/// What is known of a rule beyond its score.
struct RuleProgram {
  std::uint32_t trait = 0;
  std::uint32_t section = 0;
  CreditScale scale;
  std::vector<double> cuts;  ///< as written, stored unit; empty for levels
  std::vector<std::optional<std::size_t>>
      better;  ///< for each band: the cut toward a better neighbour
  std::vector<Register> applies_needs;
  std::vector<SpokenWords> band_words;
  SpokenWords words;
};

/// The lowest score of a grade, in thousandths of a point.
using GradeBound = double;

struct Program {
  std::vector<RowInput> inputs;
  std::vector<PlainInput> plain_inputs;
  std::vector<Register> other_inputs;
  std::vector<Constant> constants;
  std::vector<Instruction> instructions;
  std::vector<Judgement> judgements;
  std::vector<Contribution> contributions;
  std::vector<Register> change_applies;  ///< as `rules.changes`; `no_register`: it always applies
  std::vector<GradeBound> grade_bounds;  ///< best first; the last is 0
  Register register_count = 0;

  RuleSet rules;                           ///< what it was made from: names, questions, reasons
  std::vector<TraitProgram> traits;        ///< as in `rules.traits`
  std::vector<RuleProgram> rule_programs;  ///< as in `rules.rules`
};

}  // namespace heelrule
