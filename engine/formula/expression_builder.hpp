// Putting a checked formula together, step by step, and saying what does not fit.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/formula/expression.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/source/diagnostic.hpp"

namespace heelrule {

constexpr Type number_type{};
constexpr Type yes_no_type{Type::Kind::yes_no, {}, 0, false};

/// A number with the dimension of `unit`.
inline Type number_in(Unit unit) { return {Type::Kind::number, facts(unit).dimension, 0, false}; }

/// What a part of a formula came to: its last step, and what is known of it.
struct Part {
  std::uint32_t step = 0;
  Type type;
  bool has_sides = false;
  Span where;
};

/// A part, or nothing where a fault in it has been reported.
using Found = std::optional<Part>;

class ExpressionBuilder {
 public:
  ExpressionBuilder(const RuleSet& rules, Diagnostics& diagnostics)
      : rules_(rules), diagnostics_(diagnostics) {}

  /// Adds a step, or a constant in its stored unit, and gives the part that ends with it.
  Part step(Step added, const Type& type, bool has_sides, Span where);
  Part constant(double value, const Type& type, Span where);

  /// An operation on two parts; its result has sides if either has.
  Part joined(Operation operation, const Part& a, const Part& b, const Type& type, Span where);

  /// What a part reads. Precondition: it is the plain value of a trait.
  const Input& input_of(const Part& part) const { return expression_.steps[part.step].input; }

  /// The whole formula. Precondition: `whole` is its last step.
  Expression finish(const Part& whole);

  /// Reports a fault.
  std::nullopt_t fail(Span where, std::string message, std::string hint);
  std::nullopt_t fail(Span where, const Problem& problem) {
    return fail(where, problem.message, problem.hint);
  }

  /// Whether a part is of the kind that is wanted: a number or yes/no. Reported if not.
  bool expect_kind(const Part& given, Type::Kind wanted);

  /// Whether two parts are of one type. Reported if not: they cannot be `deed`, as in `added`.
  bool expect_same(const Part& a, const Part& b, Span where, std::string_view deed);

  /// A type as messages name it: `a length`, ``a level of `heel_counter` ``.
  std::string in_words(const Type& type) const;

 private:
  const RuleSet& rules_;
  Diagnostics& diagnostics_;
  Expression expression_;
};

}  // namespace heelrule
