#include "engine/formula/check.hpp"

#include <fmt/format.h>

#include <array>
#include <utility>

#include "engine/quantity/fibre.hpp"
#include "engine/quantity/nearest.hpp"

namespace heelrule {
namespace {

constexpr Type number_type{};
constexpr Type yes_no_type{Type::Kind::yes_no, {}, 0, false};

enum class Call : std::uint8_t {
  minimum,
  maximum,
  mean,
  absolute,
  tangent,
  arctangent,
  left,
  right,
  larger,
  smaller,
  mean_of_sides,
  difference,
  share,
  moisture,
  shortest_foot,
  longest_foot,
};

struct Function {
  std::string_view name;
  Call call;
  std::size_t fewest;
  std::size_t most;
};

constexpr std::size_t any_number = 100;
constexpr std::array<Function, 16> functions{{
    {"min", Call::minimum, 2, any_number},
    {"max", Call::maximum, 2, any_number},
    {"mean", Call::mean, 2, any_number},
    {"abs", Call::absolute, 1, 1},
    {"tan", Call::tangent, 1, 1},
    {"atan", Call::arctangent, 1, 1},
    {"left", Call::left, 1, 1},
    {"right", Call::right, 1, 1},
    {"larger", Call::larger, 1, 1},
    {"smaller", Call::smaller, 1, 1},
    {"mean_of_sides", Call::mean_of_sides, 1, 1},
    {"difference", Call::difference, 1, 1},
    {"share", Call::share, 2, 2},
    {"moisture", Call::moisture, 1, 1},
    {"shortest_foot", Call::shortest_foot, 1, 1},
    {"longest_foot", Call::longest_foot, 1, 1},
}};

// What a part of the formula came to: its last step, and what is known of it.
struct Part {
  std::uint32_t step = 0;
  Type type;
  bool has_sides = false;
  Span where;
};

class Checker {
 public:
  Checker(const RuleSet& rules, std::span<const std::optional<TraitType>> types,
          Diagnostics& diagnostics)
      : rules_(rules), types_(types), diagnostics_(diagnostics) {}

  std::optional<Expression> check(const Syntax& syntax) {
    const auto whole = part(syntax);
    if (!whole) {
      return std::nullopt;
    }
    expression_.type = whole->type;
    expression_.has_sides = whole->has_sides;
    return std::move(expression_);
  }

 private:
  using Found = std::optional<Part>;

  Found part(const Syntax& syntax) {
    switch (syntax.form) {
      case Form::value:
        return constant(syntax.value.stored,
                        Type{Type::Kind::number, facts(syntax.value.unit).dimension, 0, false},
                        syntax.where);
      case Form::yes:
      case Form::no:
        return constant(syntax.form == Form::yes ? 1 : 0, yes_no_type, syntax.where);
      case Form::name:
        return trait(syntax);
      case Form::quoted:
        return fail(
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

  Found fail(Span where, std::string message, std::string hint) {
    diagnostics_.error(where, std::move(message), std::move(hint));
    return std::nullopt;
  }

  Part step(Step added, const Type& type, bool has_sides, Span where) {
    expression_.steps.push_back(std::move(added));
    return {static_cast<std::uint32_t>(expression_.steps.size() - 1), type, has_sides, where};
  }

  Part constant(double value, const Type& type, Span where) {
    return step({Operation::constant, value, {}, {}}, type, false, where);
  }

  Part joined(Operation operation, const Part& a, const Part& b, const Type& type, Span where) {
    return step({operation, 0, {}, {a.step, b.step}}, type, a.has_sides || b.has_sides, where);
  }

  Found trait(const Syntax& syntax) {
    const auto index = rules_.find_trait(syntax.name);
    if (!index) {
      Nearest nearest(syntax.name);
      for (const Trait& known : rules_.traits) {
        nearest.offer(known.name);
      }
      return fail(syntax.where, fmt::format("there is no trait `{}`", syntax.name),
                  nearest.found() ? nearest.question() : "name a trait of this rule set");
    }
    const auto& known = types_[*index];
    if (!known) {
      return std::nullopt;
    }
    return step({Operation::input, 0, {static_cast<std::uint32_t>(*index), Facet::value, {}}, {}},
                known->type, known->has_sides, syntax.where);
  }

  Found unary(const Syntax& syntax, Operation operation, Type::Kind wanted) {
    const Found inner = part(syntax.parts[0]);
    if (!inner || !expect_kind(*inner, wanted)) {
      return std::nullopt;
    }
    return step({operation, 0, {}, {inner->step}}, inner->type, inner->has_sides, syntax.where);
  }

  bool expect_kind(const Part& given, Type::Kind wanted) {
    if (given.type.kind == wanted) {
      return true;
    }
    const bool yes_no = wanted == Type::Kind::yes_no;
    fail(given.where,
         fmt::format("this is {}, and {} is due here", in_words(given.type, rules_),
                     yes_no ? "yes or no" : "a number or a measure"),
         yes_no ? "compare it, as in `heel_height > 25 mm`" : "use a measure or a number");
    return false;
  }

  std::optional<std::pair<Part, Part>> both(const Syntax& syntax) {
    const Found a = part(syntax.parts[0]);
    const Found b = part(syntax.parts[1]);
    if (!a || !b) {
      return std::nullopt;
    }
    return std::pair(*a, *b);
  }

  bool expect_same(const Part& a, const Part& b, Span where, std::string_view deed) {
    if (a.type == b.type) {
      return true;
    }
    fail(where,
         fmt::format("{} and {} cannot be {}", in_words(a.type, rules_), in_words(b.type, rules_),
                     deed),
         b.type == number_type ? "give the number a unit, as in `6 mm`"
                               : "both need to be of one kind");
    return false;
  }

  Found sum(const Syntax& syntax, Operation operation) {
    const auto sides = both(syntax);
    if (!sides) {
      return std::nullopt;
    }
    const auto& [a, b] = *sides;
    if (!expect_kind(a, Type::Kind::number) || !expect_kind(b, Type::Kind::number) ||
        !expect_same(a, b, syntax.where,
                     operation == Operation::add ? "added" : "taken from each other")) {
      return std::nullopt;
    }
    return joined(operation, a, b, a.type, syntax.where);
  }

  Found product(const Syntax& syntax, Operation operation) {
    const auto sides = both(syntax);
    if (!sides) {
      return std::nullopt;
    }
    const auto& [a, b] = *sides;
    if (!expect_kind(a, Type::Kind::number) || !expect_kind(b, Type::Kind::number)) {
      return std::nullopt;
    }
    Type type;
    type.dimension = operation == Operation::multiply ? a.type.dimension * b.type.dimension
                                                      : a.type.dimension / b.type.dimension;
    return joined(operation, a, b, type, syntax.where);
  }

  Found logic(const Syntax& syntax, Operation operation) {
    const auto sides = both(syntax);
    if (!sides || !expect_kind(sides->first, Type::Kind::yes_no) ||
        !expect_kind(sides->second, Type::Kind::yes_no)) {
      return std::nullopt;
    }
    return joined(operation, sides->first, sides->second, yes_no_type, syntax.where);
  }

  Found comparison(const Syntax& syntax) {
    const Found a = part(syntax.parts[0]);
    if (!a) {
      return std::nullopt;
    }
    const Found b = a->type.kind == Type::Kind::level ? level_or_part(syntax.parts[1], a->type)
                                                      : part(syntax.parts[1]);
    if (!b || !expect_same(*a, *b, syntax.where, "compared")) {
      return std::nullopt;
    }
    const bool equality = syntax.form == Form::is || syntax.form == Form::is_not;
    const bool has_order = a->type.kind == Type::Kind::number || a->type.ordered;
    const bool plain = a->type.kind == Type::Kind::yes_no || a->type.kind == Type::Kind::level;
    if (!has_order && !(equality && plain)) {
      return fail(
          syntax.where, fmt::format("{} has no order to compare by", in_words(a->type, rules_)),
          plain ? "use `is` or `is not`" : "use a function such as `share` or `longest_foot`");
    }
    switch (syntax.form) {
      case Form::less:
        return joined(Operation::less, *a, *b, yes_no_type, syntax.where);
      case Form::at_most:
        return joined(Operation::at_most, *a, *b, yes_no_type, syntax.where);
      case Form::more:
        return joined(Operation::less, *b, *a, yes_no_type, syntax.where);
      case Form::at_least:
        return joined(Operation::at_most, *b, *a, yes_no_type, syntax.where);
      default:
        break;
    }
    const Part equal = joined(Operation::equal, *a, *b, yes_no_type, syntax.where);
    if (syntax.form == Form::is) {
      return equal;
    }
    return step({Operation::logical_not, 0, {}, {equal.step}}, yes_no_type, equal.has_sides,
                syntax.where);
  }

  // To the right of a level, a plain name is a level of the same scale if there is one of that
  // name.
  Found level_or_part(const Syntax& syntax, const Type& type) {
    const bool named = syntax.form == Form::name || syntax.form == Form::quoted;
    if (!named) {
      return part(syntax);
    }
    const Trait& scale = rules_.traits[type.scale];
    const std::vector<Level>& levels = levels_of(scale.kind);
    Nearest nearest(syntax.name);
    for (std::size_t i = 0; i < levels.size(); ++i) {
      if (levels[i].name.value == syntax.name) {
        return constant(static_cast<double>(i), type, syntax.where);
      }
      nearest.offer(levels[i].name.value);
    }
    if (syntax.form == Form::name && rules_.find_trait(syntax.name)) {
      return part(syntax);
    }
    std::string known;
    for (const Level& level : levels) {
      known += fmt::format("{}`{}`", known.empty() ? "" : ", ", level.name.value);
    }
    return fail(syntax.where, fmt::format("`{}` has no level `{}`", scale.name, syntax.name),
                nearest.found() ? nearest.question() : "its levels are " + known);
  }

  Found conditional(const Syntax& syntax) {
    const Found condition = part(syntax.parts[0]);
    const Found a = part(syntax.parts[1]);
    const Found b = part(syntax.parts[2]);
    if (!condition || !a || !b || !expect_kind(*condition, Type::Kind::yes_no) ||
        !expect_same(*a, *b, syntax.where, "the two ways of one `if`")) {
      return std::nullopt;
    }
    return step({Operation::choose, 0, {}, {condition->step, a->step, b->step}}, a->type,
                condition->has_sides || a->has_sides || b->has_sides, syntax.where);
  }

  Found call(const Syntax& syntax) {
    Nearest nearest(syntax.name);
    for (const Function& function : functions) {
      if (function.name == syntax.name) {
        return call(function, syntax);
      }
      nearest.offer(function.name);
    }
    return fail(syntax.where, fmt::format("there is no function `{}`", syntax.name),
                nearest.found() ? nearest.question()
                                : "see \"Formulas\" in the description of the rule language");
  }

  Found call(const Function& function, const Syntax& syntax) {
    if (syntax.parts.size() < function.fewest || syntax.parts.size() > function.most) {
      return fail(
          syntax.where,
          fmt::format("`{}` takes {} {}, and {} given", function.name,
                      function.most == any_number ? fmt::format("{} or more", function.fewest)
                                                  : fmt::format("{}", function.fewest),
                      function.fewest == 1 ? "value" : "values",
                      syntax.parts.size() == 1 ? std::string("1 is")
                                               : fmt::format("{} are", syntax.parts.size())),
          "");
    }
    switch (function.call) {
      case Call::minimum:
      case Call::maximum:
      case Call::mean:
        return combined(function, syntax);
      case Call::absolute:
        return unary(syntax, Operation::absolute, Type::Kind::number);
      case Call::tangent:
        return converted(syntax, Operation::tangent, facts(Unit::degree).dimension, {});
      case Call::arctangent:
        return converted(syntax, Operation::arctangent, {}, facts(Unit::degree).dimension);
      case Call::left:
      case Call::right:
      case Call::larger:
      case Call::smaller:
      case Call::mean_of_sides:
      case Call::difference:
        return of_sides(function, syntax);
      case Call::share:
      case Call::moisture:
      case Call::shortest_foot:
      case Call::longest_foot:
        return facet(function, syntax);
    }
    return std::nullopt;
  }

  // min, max and mean: the same kind of number, two at a time.
  Found combined(const Function& function, const Syntax& syntax) {
    Found all;
    bool ok = true;
    for (const Syntax& argument : syntax.parts) {
      const Found next = part(argument);
      ok = ok && next && expect_kind(*next, Type::Kind::number) &&
           (!all || expect_same(*all, *next, argument.where, "compared"));
      if (!ok) {
        continue;
      }
      const Operation operation = function.call == Call::minimum   ? Operation::minimum
                                  : function.call == Call::maximum ? Operation::maximum
                                                                   : Operation::add;
      all = all ? joined(operation, *all, *next, all->type, syntax.where) : next;
    }
    if (!ok) {
      return std::nullopt;
    }
    return function.call == Call::mean ? divided(*all, syntax.parts.size(), syntax.where) : all;
  }

  Part divided(const Part& sum, std::size_t count, Span where) {
    const Part by = constant(static_cast<double>(count), number_type, where);
    return joined(Operation::divide, sum, by, sum.type, where);
  }

  Found converted(const Syntax& syntax, Operation operation, Dimension from, Dimension to) {
    const Found inner = part(syntax.parts[0]);
    if (!inner) {
      return std::nullopt;
    }
    const Type wanted{Type::Kind::number, from, 0, false};
    if (inner->type != wanted) {
      return fail(
          inner->where,
          fmt::format("this is {}, and `{}` takes {}", in_words(inner->type, rules_), syntax.name,
                      in_words(wanted, rules_)),
          operation == Operation::tangent ? "give it an angle" : "divide one length by another");
    }
    const Type type{Type::Kind::number, to, 0, false};
    return step({operation, 0, {}, {inner->step}}, type, inner->has_sides, syntax.where);
  }

  Found of_sides(const Function& function, const Syntax& syntax) {
    const Found inner = part(syntax.parts[0]);
    if (!inner) {
      return std::nullopt;
    }
    if (!inner->has_sides) {
      return fail(inner->where, fmt::format("`{}` needs a value with two sides", function.name),
                  "leave the function away, or record the trait `per: foot` or `per: shoe`");
    }
    const bool one_side = function.call == Call::left || function.call == Call::right;
    const bool compares = function.call == Call::larger || function.call == Call::smaller;
    const bool is_number = inner->type.kind == Type::Kind::number;
    if (!one_side && !is_number && !(compares && inner->type.ordered)) {
      return fail(
          inner->where,
          fmt::format("`{}` cannot be taken of {}", function.name, in_words(inner->type, rules_)),
          compares ? "use a measure or a scale" : "use a measure");
    }
    const Part left = bound(Operation::left, *inner, syntax.where);
    if (function.call == Call::left) {
      return left;
    }
    const Part right = bound(Operation::right, *inner, syntax.where);
    const auto join = [&](Operation operation) {
      return joined(operation, left, right, inner->type, syntax.where);
    };
    switch (function.call) {
      case Call::larger:
        return join(Operation::maximum);
      case Call::smaller:
        return join(Operation::minimum);
      case Call::mean_of_sides:
        return divided(join(Operation::add), 2, syntax.where);
      case Call::difference: {
        const Part less = join(Operation::subtract);
        return step({Operation::absolute, 0, {}, {less.step}}, inner->type, false, syntax.where);
      }
      default:
        return right;
    }
  }

  Part bound(Operation side, const Part& inner, Span where) {
    return step({side, 0, {}, {inner.step}}, inner.type, false, where);
  }

  // A number that is read from a trait whose value is more than one number.
  Found facet(const Function& function, const Syntax& syntax) {
    const Found whole = part(syntax.parts[0]);
    if (!whole) {
      return std::nullopt;
    }
    const bool of_fibres = function.call == Call::share || function.call == Call::moisture;
    const bool fits = of_fibres ? whole->type.kind == Type::Kind::fibres
                                : whole->type.kind == Type::Kind::shoe_size ||
                                      whole->type.kind == Type::Kind::sock_range;
    if (!fits || syntax.parts[0].form != Form::name) {
      return fail(whole->where,
                  fmt::format("`{}` takes a trait that records {}", function.name,
                              of_fibres ? "a fibre content" : "a marked size"),
                  of_fibres ? "name a trait with `content: fibres`"
                            : "name a trait with `marked: shoe size` or `marked: sock range`");
    }
    Input input = expression_.steps[whole->step].input;
    Type type = number_type;
    switch (function.call) {
      case Call::share: {
        const Syntax& second = syntax.parts[1];
        const auto group = parse_fibre_group(second.name);
        if (!group) {
          return fail(second.where, group.problem().message, group.problem().hint);
        }
        input.facet = Facet::share;
        input.fibres = *group;
        break;
      }
      case Call::moisture:
        input.facet = Facet::moisture;
        break;
      default:
        input.facet =
            function.call == Call::shortest_foot ? Facet::shortest_foot : Facet::longest_foot;
        type.dimension = facts(Unit::millimetre).dimension;
        break;
    }
    return step({Operation::input, 0, input, {}}, type, whole->has_sides, syntax.where);
  }

  const RuleSet& rules_;
  std::span<const std::optional<TraitType>> types_;
  Diagnostics& diagnostics_;
  Expression expression_;
};

}  // namespace

std::optional<Expression> check_formula(const Syntax& syntax, const RuleSet& rules,
                                        std::span<const std::optional<TraitType>> types,
                                        Diagnostics& diagnostics) {
  return Checker(rules, types, diagnostics).check(syntax);
}

std::string in_words(const Type& type, const RuleSet& rules) {
  switch (type.kind) {
    case Type::Kind::number: {
      const std::string words = in_words(type.dimension);
      return (words == "angle" ? "an " : "a ") + words;
    }
    case Type::Kind::yes_no:
      return "yes or no";
    case Type::Kind::level:
      return fmt::format("a {} of `{}`", type.ordered ? "level" : "choice",
                         rules.traits[type.scale].name);
    case Type::Kind::fibres:
      return "a fibre content";
    case Type::Kind::shoe_size:
      return "a shoe size";
    case Type::Kind::sock_range:
      return "a sock range";
  }
  return {};
}

}  // namespace heelrule
