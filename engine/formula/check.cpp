#include "engine/formula/check.hpp"

#include <fmt/format.h>

#include <utility>
#include <vector>

#include "engine/formula/check_call.hpp"
#include "engine/formula/expression_builder.hpp"
#include "engine/formula/function.hpp"
#include "engine/quantity/nearest.hpp"

namespace heelrule {
namespace {

class Checker {
 public:
  Checker(const RuleSet& rules, std::span<const std::optional<TraitType>> types,
          Diagnostics& diagnostics)
      : rules_(rules), types_(types), builder_(rules, diagnostics) {}

  std::optional<Expression> check(const Syntax& syntax) {
    const Found whole = part(syntax);
    return whole ? std::optional(builder_.finish(*whole)) : std::nullopt;
  }

 private:
  Found part(const Syntax& syntax) {
    switch (syntax.form) {
      case Form::value:
        return builder_.constant(syntax.value.stored, number_in(syntax.value.unit), syntax.where);
      case Form::yes:
      case Form::no:
        return builder_.constant(syntax.form == Form::yes ? 1 : 0, yes_no_type, syntax.where);
      case Form::name:
        return trait(syntax);
      case Form::quoted:
        return builder_.fail(
            syntax.where, fmt::format("\"{}\" stands where a value is due", syntax.name),
            "a text in quotes names a level or choice, to the right of `is` or a comparison");
      case Form::negate:
        return unary(syntax, Operation::negate, Type::Kind::number);
      case Form::logical_not:
        return unary(syntax, Operation::logical_not, Type::Kind::yes_no);
      case Form::add:
        return sum(syntax, Operation::add);
      case Form::subtract:
        return sum(syntax, Operation::subtract);
      case Form::multiply:
        return product(syntax, Operation::multiply);
      case Form::divide:
        return product(syntax, Operation::divide);
      case Form::less:
      case Form::at_most:
      case Form::more:
      case Form::at_least:
      case Form::is:
      case Form::is_not:
        return comparison(syntax);
      case Form::logical_and:
        return logic(syntax, Operation::logical_and);
      case Form::logical_or:
        return logic(syntax, Operation::logical_or);
      case Form::choose:
        return conditional(syntax);
      case Form::call:
        return call(syntax);
    }
    return std::nullopt;
  }

  Found trait(const Syntax& syntax) {
    const auto index = rules_.find_trait(syntax.name);
    if (!index) {
      Nearest nearest(syntax.name);
      for (const Trait& known : rules_.traits) {
        nearest.offer(known.name);
      }
      return builder_.fail(syntax.where, fmt::format("there is no trait `{}`", syntax.name),
                           nearest.found() ? nearest.question() : "name a trait of this rule set");
    }
    const auto& known = types_[*index];
    if (!known) {
      return std::nullopt;
    }
    return builder_.step(
        {Operation::input, 0, {static_cast<std::uint32_t>(*index), Facet::value, {}}, {}},
        known->type, known->has_sides, syntax.where);
  }

  Found unary(const Syntax& syntax, Operation operation, Type::Kind wanted) {
    const Found inner = part(syntax.parts[0]);
    if (!inner || !builder_.expect_kind(*inner, wanted)) {
      return std::nullopt;
    }
    return builder_.step({operation, 0, {}, {inner->step}}, inner->type, inner->has_sides,
                         syntax.where);
  }

  std::optional<std::pair<Part, Part>> both(const Syntax& syntax) {
    const Found a = part(syntax.parts[0]);
    const Found b = part(syntax.parts[1]);
    if (!a || !b) {
      return std::nullopt;
    }
    return std::pair(*a, *b);
  }

  std::optional<std::pair<Part, Part>> both(const Syntax& syntax, Type::Kind wanted) {
    const auto sides = both(syntax);
    if (!sides) {
      return std::nullopt;
    }
    const bool first = builder_.expect_kind(sides->first, wanted);
    const bool second = builder_.expect_kind(sides->second, wanted);
    return first && second ? sides : std::nullopt;
  }

  Found sum(const Syntax& syntax, Operation operation) {
    const auto sides = both(syntax, Type::Kind::number);
    if (!sides ||
        !builder_.expect_same(sides->first, sides->second, syntax.where,
                              operation == Operation::add ? "added" : "taken from each other")) {
      return std::nullopt;
    }
    return builder_.joined(operation, sides->first, sides->second, sides->first.type, syntax.where);
  }

  Found product(const Syntax& syntax, Operation operation) {
    const auto sides = both(syntax, Type::Kind::number);
    if (!sides) {
      return std::nullopt;
    }
    const auto& [a, b] = *sides;
    Type type;
    type.dimension = operation == Operation::multiply ? a.type.dimension * b.type.dimension
                                                      : a.type.dimension / b.type.dimension;
    return builder_.joined(operation, a, b, type, syntax.where);
  }

  Found logic(const Syntax& syntax, Operation operation) {
    const auto sides = both(syntax, Type::Kind::yes_no);
    if (!sides) {
      return std::nullopt;
    }
    return builder_.joined(operation, sides->first, sides->second, yes_no_type, syntax.where);
  }

  Found comparison(const Syntax& syntax) {
    const Found a = part(syntax.parts[0]);
    if (!a) {
      return std::nullopt;
    }
    const Found b = a->type.kind == Type::Kind::level ? level_or_part(syntax.parts[1], a->type)
                                                      : part(syntax.parts[1]);
    if (!b || !builder_.expect_same(*a, *b, syntax.where, "compared") ||
        !expect_order(*a, syntax)) {
      return std::nullopt;
    }
    switch (syntax.form) {
      case Form::less:
        return builder_.joined(Operation::less, *a, *b, yes_no_type, syntax.where);
      case Form::at_most:
        return builder_.joined(Operation::at_most, *a, *b, yes_no_type, syntax.where);
      case Form::more:
        return builder_.joined(Operation::less, *b, *a, yes_no_type, syntax.where);
      case Form::at_least:
        return builder_.joined(Operation::at_most, *b, *a, yes_no_type, syntax.where);
      default:
        break;
    }
    const Part equal = builder_.joined(Operation::equal, *a, *b, yes_no_type, syntax.where);
    if (syntax.form == Form::is) {
      return equal;
    }
    return builder_.step({Operation::logical_not, 0, {}, {equal.step}}, yes_no_type,
                         equal.has_sides, syntax.where);
  }

  // Numbers and scales have an order; choices and yes/no are the same or not; the rest is more than
  // one number.
  bool expect_order(const Part& compared, const Syntax& syntax) {
    const Type& type = compared.type;
    const bool equality = syntax.form == Form::is || syntax.form == Form::is_not;
    const bool has_order = type.kind == Type::Kind::number || type.ordered;
    const bool plain = type.kind == Type::Kind::yes_no || type.kind == Type::Kind::level;
    if (has_order || (equality && plain)) {
      return true;
    }
    builder_.fail(
        syntax.where,
        plain ? fmt::format("{} has no order to compare by", builder_.in_words(type))
              : fmt::format("{} cannot be compared as a whole", builder_.in_words(type)),
        plain ? "use `is` or `is not`" : "use a function such as `share` or `longest_foot`");
    return false;
  }

  // To the right of a level, a plain name is a level of the same scale if there is one of that
  // name.
  Found level_or_part(const Syntax& syntax, const Type& type) {
    const bool named = syntax.form == Form::name || syntax.form == Form::quoted;
    if (!named) {
      return part(syntax);
    }
    const auto level = find_level(rules_.traits[type.scale], syntax.name);
    if (level) {
      return builder_.constant(static_cast<double>(*level), type, syntax.where);
    }
    if (syntax.form == Form::name && rules_.find_trait(syntax.name)) {
      return part(syntax);
    }
    return builder_.fail(syntax.where, level.problem());
  }

  Found conditional(const Syntax& syntax) {
    const Found condition = part(syntax.parts[0]);
    const Found a = part(syntax.parts[1]);
    const Found b = part(syntax.parts[2]);
    if (!condition || !a || !b || !builder_.expect_kind(*condition, Type::Kind::yes_no) ||
        !builder_.expect_same(*a, *b, syntax.where, "the two ways of one `if`")) {
      return std::nullopt;
    }
    return builder_.step({Operation::choose, 0, {}, {condition->step, a->step, b->step}}, a->type,
                         condition->has_sides || a->has_sides || b->has_sides, syntax.where);
  }

  Found call(const Syntax& syntax) {
    Nearest nearest(syntax.name);
    std::vector<std::string_view> names;
    for (const Function& function : known_functions()) {
      if (function.name == syntax.name) {
        return call(function, syntax);
      }
      nearest.offer(function.name);
      names.push_back(function.name);
    }
    return builder_.fail(syntax.where, fmt::format("there is no function `{}`", syntax.name),
                         nearest.found()
                             ? nearest.question()
                             : fmt::format("the functions are `{}`", fmt::join(names, "`, `")));
  }

  Found call(const Function& function, const Syntax& syntax) {
    const std::size_t given = syntax.parts.size();
    if (given < function.fewest || given > function.most) {
      return builder_.fail(
          syntax.where,
          fmt::format("`{}` takes {}{} {}, and {} given", function.name, function.fewest,
                      function.takes_any_number() ? " or more" : "",
                      function.most == 1 ? "value" : "values",
                      given == 1 ? std::string("1 is") : fmt::format("{} are", given)),
          given < function.fewest ? "add what is missing" : "leave out what is too much");
    }
    // The second word of `share` is a fibre, and no part that has a value.
    const std::size_t valued = function.call == Call::share ? 1 : given;
    std::vector<Part> values;
    for (std::size_t i = 0; i < valued; ++i) {
      if (const Found value = part(syntax.parts[i])) {
        values.push_back(*value);
      }
    }
    return values.size() == valued ? check_call(function, syntax, values, builder_) : std::nullopt;
  }

  const RuleSet& rules_;
  std::span<const std::optional<TraitType>> types_;
  ExpressionBuilder builder_;
};

}  // namespace

std::optional<Expression> check_formula(const Syntax& syntax, const RuleSet& rules,
                                        std::span<const std::optional<TraitType>> types,
                                        Diagnostics& diagnostics) {
  return Checker(rules, types, diagnostics).check(syntax);
}

}  // namespace heelrule
