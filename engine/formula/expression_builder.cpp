#include "engine/formula/expression_builder.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/formula/type_words.hpp"

namespace heelrule {

Part ExpressionBuilder::step(Step added, const Type& type, bool has_sides, Span where) {
  expression_.steps.push_back(std::move(added));
  return {static_cast<std::uint32_t>(expression_.steps.size() - 1), type, has_sides, where};
}

Part ExpressionBuilder::constant(double value, const Type& type, Span where) {
  return step({Operation::constant, value, {}, {}}, type, false, where);
}

Part ExpressionBuilder::joined(Operation operation, const Part& a, const Part& b, const Type& type,
                               Span where) {
  return step({operation, 0, {}, {a.step, b.step}}, type, a.has_sides || b.has_sides, where);
}

Expression ExpressionBuilder::finish(const Part& whole) {
  expression_.type = whole.type;
  expression_.has_sides = whole.has_sides;
  return std::move(expression_);
}

std::nullopt_t ExpressionBuilder::fail(Span where, std::string message, std::string hint) {
  diagnostics_.error(where, std::move(message), std::move(hint));
  return std::nullopt;
}

bool ExpressionBuilder::expect_kind(const Part& given, Type::Kind wanted) {
  if (given.type.kind == wanted) {
    return true;
  }
  const bool yes_no = wanted == Type::Kind::yes_no;
  fail(given.where,
       fmt::format("this is {}, and {} is due here", in_words(given.type),
                   yes_no ? "yes or no" : "a number or a measure"),
       yes_no ? "compare it, as in `heel_height > 25 mm`" : "use a measure or a number");
  return false;
}

bool ExpressionBuilder::expect_same(const Part& a, const Part& b, Span where,
                                    std::string_view deed) {
  if (a.type == b.type) {
    return true;
  }
  const bool numbers = a.type.kind == Type::Kind::number && b.type.kind == Type::Kind::number;
  const bool bare = numbers && (a.type == number_type || b.type == number_type);
  fail(where, fmt::format("{} and {} cannot be {}", in_words(a.type), in_words(b.type), deed),
       bare ? "give the number a unit, as in `6 mm`" : "both need to be of one kind");
  return false;
}

std::string ExpressionBuilder::in_words(const Type& type) const {
  return heelrule::in_words(type, rules_);
}

}  // namespace heelrule
