// What a trait comes to in a record, worked out the slow and obvious way from the page "Formulas"
// of the rule language: every formula is read again from its text at each use.
#pragma once

#include <optional>

#include "engine/formula/syntax.hpp"
#include "engine/model/inspection.hpp"
#include "engine/model/rule_set.hpp"
#include "tests/oracle/fraction.hpp"

namespace heelrule {

/// A number in its stored unit, 1 for yes and 0 for no, or a level's place on its scale; nothing
/// where it is not seen.
using NaiveValue = std::optional<Fraction>;

/// Reads one record against one rule set. Both must outlive it.
class NaiveReading {
 public:
  NaiveReading(const RuleSet& rules, const Inspection& inspection)
      : rules_(rules), inspection_(inspection) {}

  bool has_sides(std::size_t trait) const;

  /// A trait on a side; `Side::none` for one without sides. Derived numbers are settled to a
  /// billionth.
  NaiveValue trait(std::size_t index, Side side) const;

  /// A formula without sides, such as `applies`.
  NaiveValue formula(const Located<std::string>& text) const;

 private:
  static bool is_function_of_sides(const std::string& name);

  bool has_sides(const Syntax& syntax) const;
  std::optional<std::size_t> scale_of(const Syntax& syntax) const;
  NaiveValue recorded(std::size_t index, Side side) const;
  NaiveValue value_of(const Syntax& syntax, Side side) const;
  NaiveValue compared(const Syntax& syntax, Side side) const;
  NaiveValue logic(const Syntax& syntax, Side side) const;
  NaiveValue called(const Syntax& syntax, Side side) const;
  NaiveValue of_sides(const Syntax& syntax) const;
  NaiveValue of_many(const Syntax& syntax, Side side) const;
  NaiveValue of_marks(const Syntax& syntax, Side side) const;

  const RuleSet& rules_;
  const Inspection& inspection_;
};

}  // namespace heelrule
