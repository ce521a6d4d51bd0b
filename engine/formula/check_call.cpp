#include "engine/formula/check_call.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/fitting/growth.hpp"
#include "engine/quantity/fibre.hpp"

namespace heelrule {
namespace {

class CallChecker {
 public:
  CallChecker(const Function& function, const Syntax& call, std::span<const Part> values,
              ExpressionBuilder& builder)
      : function_(function), syntax_(call), values_(values), builder_(builder) {}

  Found check() {
    switch (function_.call) {
      case Call::minimum:
        return combined(Operation::minimum);
      case Call::maximum:
        return combined(Operation::maximum);
      case Call::mean:
        return mean();
      case Call::absolute:
        return absolute();
      case Call::tangent:
        return converted(Operation::tangent, number_in(Unit::degree), number_type);
      case Call::arctangent:
        return converted(Operation::arctangent, number_type, number_in(Unit::degree));
      case Call::left:
      case Call::right:
      case Call::larger:
      case Call::smaller:
      case Call::mean_of_sides:
      case Call::difference:
        return of_sides();
      case Call::share:
      case Call::moisture:
        return of_fibres();
      case Call::shortest_foot:
      case Call::longest_foot:
        return of_size();
      case Call::monthly_growth:
        return monthly_growth();
    }
    return std::nullopt;
  }

 private:
  bool expect_type(const Part& given, const Type& wanted, std::string hint) {
    if (given.type != wanted) {
      builder_.fail(given.where,
                    fmt::format("this is {}, and `{}` takes {}", builder_.in_words(given.type),
                                function_.name, builder_.in_words(wanted)),
                    std::move(hint));
    }
    return given.type == wanted;
  }

  // The same kind of number, two at a time.
  Found combined(Operation operation) {
    bool sound = true;
    for (const Part& value : values_) {
      sound = sound && builder_.expect_kind(value, Type::Kind::number) &&
              builder_.expect_same(values_[0], value, value.where, "compared");
    }
    if (!sound) {
      return std::nullopt;
    }
    Part all = values_[0];
    for (const Part& value : values_.subspan(1)) {
      all = builder_.joined(operation, all, value, all.type, syntax_.where);
    }
    return all;
  }

  Found mean() {
    const Found sum = combined(Operation::add);
    return sum ? Found(divided(*sum, values_.size())) : std::nullopt;
  }

  Part divided(const Part& sum, std::size_t count) {
    const Part by = builder_.constant(static_cast<double>(count), number_type, syntax_.where);
    return builder_.joined(Operation::divide, sum, by, sum.type, syntax_.where);
  }

  Found absolute() {
    const Part& inner = values_[0];
    if (!builder_.expect_kind(inner, Type::Kind::number)) {
      return std::nullopt;
    }
    return builder_.step({Operation::absolute, 0, {}, {inner.step}}, inner.type, inner.has_sides,
                         syntax_.where);
  }

  Found converted(Operation operation, const Type& from, const Type& to) {
    const Part& inner = values_[0];
    if (!expect_type(inner, from,
                     operation == Operation::tangent ? "give it an angle"
                                                     : "divide one length by another")) {
      return std::nullopt;
    }
    return builder_.step({operation, 0, {}, {inner.step}}, to, inner.has_sides, syntax_.where);
  }

  Found of_sides() {
    const Part& inner = values_[0];
    if (!inner.has_sides) {
      return builder_.fail(inner.where,
                           fmt::format("`{}` needs a value with two sides", function_.name),
                           "leave the function away, or record the trait `per: foot` or "
                           "`per: shoe`");
    }
    const bool one_side = function_.call == Call::left || function_.call == Call::right;
    const bool compares = function_.call == Call::larger || function_.call == Call::smaller;
    const bool is_number = inner.type.kind == Type::Kind::number;
    if (!one_side && !is_number && !(compares && inner.type.ordered)) {
      return builder_.fail(
          inner.where,
          fmt::format("`{}` cannot be taken of {}", function_.name, builder_.in_words(inner.type)),
          compares ? "use a measure or a scale" : "use a measure");
    }
    if (one_side) {
      return bound(function_.call == Call::left ? Operation::left : Operation::right);
    }
    return of_both_sides();
  }

  Part of_both_sides() {
    const Part left = bound(Operation::left);
    const Part right = bound(Operation::right);
    switch (function_.call) {
      case Call::larger:
        return both(Operation::maximum, left, right);
      case Call::smaller:
        return both(Operation::minimum, left, right);
      case Call::mean_of_sides:
        return divided(both(Operation::add, left, right), 2);
      default: {
        const Part less = both(Operation::subtract, left, right);
        return builder_.step({Operation::absolute, 0, {}, {less.step}}, less.type, false,
                             syntax_.where);
      }
    }
  }

  Part bound(Operation side) {
    return builder_.step({side, 0, {}, {values_[0].step}}, values_[0].type, false, syntax_.where);
  }

  Part both(Operation operation, const Part& left, const Part& right) {
    return builder_.joined(operation, left, right, left.type, syntax_.where);
  }

  // Numbers that are read from a trait whose value is more than one number.
  Found of_fibres() {
    if (values_[0].type.kind != Type::Kind::fibres || !names_a_trait()) {
      return builder_.fail(
          values_[0].where,
          fmt::format("`{}` takes a trait that records a fibre content", function_.name),
          "name a trait with `content: fibres`");
    }
    if (function_.call == Call::moisture) {
      return facet(Facet::moisture, {}, number_type);
    }
    const Syntax& named = syntax_.parts[1];
    if (named.form != Form::name && named.form != Form::quoted) {
      return builder_.fail(named.where, "the name of a fibre is due here",
                           "write `share(sock_fibres, cotton)`, and two words in quotes");
    }
    const auto group = parse_fibre_group(named.name);
    if (!group) {
      return builder_.fail(named.where, group.problem());
    }
    return facet(Facet::share, *group, number_type);
  }

  Found of_size() {
    const Type::Kind kind = values_[0].type.kind;
    const bool fits = kind == Type::Kind::shoe_size || kind == Type::Kind::sock_range;
    if (!fits || !names_a_trait()) {
      return builder_.fail(
          values_[0].where,
          fmt::format("`{}` takes a trait that records a marked size", function_.name),
          "name a trait with `marked: shoe size` or `marked: sock range`");
    }
    return facet(function_.call == Call::shortest_foot ? Facet::shortest_foot : Facet::longest_foot,
                 {}, number_in(Unit::millimetre));
  }

  // The table of growth by age, as a choice between its stages.
  Found monthly_growth() {
    const Part& age = values_[0];
    const Type length = number_in(Unit::millimetre);
    if (!expect_type(age, number_in(Unit::year), "give it an age: `monthly_growth(child_age)`")) {
      return std::nullopt;
    }
    const auto stages = growth_stages();
    Part growth = builder_.constant(stages.back().pace.expected, length, syntax_.where);
    for (std::size_t i = stages.size() - 1; i-- > 0;) {
      const double end = stages[i + 1].from_age * facts(Unit::year).factor;
      const Part ends = builder_.constant(end, age.type, syntax_.where);
      const Part younger = builder_.joined(Operation::less, age, ends, yes_no_type, syntax_.where);
      const Part here = builder_.constant(stages[i].pace.expected, length, syntax_.where);
      growth = builder_.step({Operation::choose, 0, {}, {younger.step, here.step, growth.step}},
                             length, age.has_sides, syntax_.where);
    }
    return growth;
  }

  bool names_a_trait() const { return syntax_.parts[0].form == Form::name; }

  Part facet(Facet facet, FibreGroup fibres, const Type& type) {
    const Input input{builder_.input_of(values_[0]).trait, facet, fibres};
    return builder_.step({Operation::input, 0, input, {}}, type, values_[0].has_sides,
                         syntax_.where);
  }

  const Function& function_;
  const Syntax& syntax_;
  std::span<const Part> values_;
  ExpressionBuilder& builder_;
};

}  // namespace

Found check_call(const Function& function, const Syntax& call, std::span<const Part> values,
                 ExpressionBuilder& builder) {
  return CallChecker(function, call, values, builder).check();
}

}  // namespace heelrule
