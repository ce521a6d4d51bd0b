#include "engine/formula/syntax.hpp"

#include <catch2/catch.hpp>

#include "engine/source/sources.hpp"

namespace heelrule {
namespace {

std::string_view sign(Form form) {
  switch (form) {
    case Form::negate:
    case Form::subtract:
      return "-";
    case Form::logical_not:
      return "not";
    case Form::add:
      return "+";
    case Form::multiply:
      return "*";
    case Form::divide:
      return "/";
    case Form::less:
      return "<";
    case Form::at_most:
      return "<=";
    case Form::more:
      return ">";
    case Form::at_least:
      return ">=";
    case Form::is:
      return "is";
    case Form::is_not:
      return "is not";
    case Form::logical_and:
      return "and";
    case Form::logical_or:
      return "or";
    case Form::choose:
      return "if";
    case Form::yes:
      return "yes";
    case Form::no:
      return "no";
    default:
      return "";
  }
}

// The shape of a formula: the sign first, then its parts, all in brackets.
std::string shape(const Syntax& syntax) {
  std::string text(sign(syntax.form));
  if (syntax.form == Form::value) {
    text = show(syntax.value.stored, syntax.value.unit, 9);
  } else if (syntax.form == Form::quoted) {
    text = "\"" + syntax.name + "\"";
  } else if (!syntax.name.empty()) {
    text = syntax.name;
  }
  if (syntax.parts.empty()) {
    return text;
  }
  for (const Syntax& part : syntax.parts) {
    text += " " + shape(part);
  }
  return "(" + text + ")";
}

Located<std::string> formula(const std::string& text) {
  return {text, {0, 0, static_cast<std::uint32_t>(text.size())}};
}

std::string parsed(const std::string& text) {
  Diagnostics diagnostics;
  const auto syntax = parse_formula(formula(text), diagnostics);
  CHECK(syntax.has_value() != diagnostics.has_errors());
  return syntax ? shape(*syntax) : diagnostics.by_place()[0].message;
}

TEST_CASE("products bind tighter than sums, and both from the left") {
  CHECK(parsed("a + b * c - d / e") == "(- (+ a (* b c)) (/ d e))");
  CHECK(parsed("a - b - c") == "(- (- a b) c)");
  CHECK(parsed("a / b / c") == "(/ (/ a b) c)");
  CHECK(parsed("(a - b) * -c") == "(* (- a b) (- c))");
  CHECK(parsed("--a") == "(- (- a))");
}

TEST_CASE("comparisons bind looser than sums, and logic looser still") {
  CHECK(parsed("a + 1 mm < b and not c or d") == "(or (and (< (+ a 1 mm) b) (not c)) d)");
  CHECK(parsed("not a < b") == "(not (< a b))");
  CHECK(parsed("a or b and c") == "(or a (and b c))");
  CHECK(parsed("a is not \"hook and loop\"") == "(is not a \"hook and loop\")");
  CHECK(parsed("a >= b is no") == "a comparison cannot be compared again");
}

TEST_CASE("a conditional takes as much as follows, and stands inside others in brackets") {
  CHECK(parsed("if a then b else c + 1") == "(if a b (+ c 1))");
  CHECK(parsed("if a then b else if c then d else e") == "(if a b (if c d e))");
  CHECK(parsed("1 + (if a then b else c)") == "(+ 1 (if a b c))");
  CHECK(parsed("1 + if a then b else c") == "a value, a trait or `(` is due here");
}

TEST_CASE("a call has its values in brackets") {
  CHECK(parsed("max(a, b + c, min(d, e))") == "(max a (+ b c) (min d e))");
  CHECK(parsed("yes") == "yes");
  CHECK(parsed("max(a") == "`)` is due here");
  CHECK(parsed("max(a,)") == "a value, a trait or `(` is due here");
}

TEST_CASE("a part knows its place in the formula") {
  Diagnostics diagnostics;
  Sources sources;
  const std::string text = "max(a, b) - (c + 6 mm)";
  sources.add("f", text);
  const auto syntax = parse_formula(formula(text), diagnostics);
  REQUIRE(syntax);
  CHECK(sources.text(syntax->parts[0].where) == "max(a, b)");
  CHECK(sources.text(syntax->parts[1].where) == "c + 6 mm");
  CHECK(sources.text(syntax->parts[1].parts[1].where) == "6 mm");
}

TEST_CASE("what is no formula is said to be none, once") {
  CHECK(parsed("") == "a value, a trait or `(` is due here");
  CHECK(parsed("a b") == "the formula goes on where it should end");
  CHECK(parsed("a )") == "the formula goes on where it should end");
  CHECK(parsed("a +") == "a value, a trait or `(` is due here");
  CHECK(parsed("if a b else c") == "`then` is due here");
  CHECK(parsed("if a then b") == "`else` is due here");
  Diagnostics diagnostics;
  parse_formula(formula("((a + ) * (b - ) c"), diagnostics);
  CHECK(diagnostics.error_count() == 1);
}

TEST_CASE("depth and length have an end") {
  const auto brackets = [](std::size_t depth) {
    return std::string(depth, '(') + "a" + std::string(depth, ')');
  };
  CHECK(parsed(brackets(59)) == "a");
  CHECK(parsed(brackets(60)) == "the formula is nested more than 60 deep");
  CHECK(parsed(brackets(100'000)) == "the formula is nested more than 60 deep");
  CHECK(parsed(std::string(100'000, '-') + "a") == "the formula is nested more than 60 deep");
  std::string sum = "1";
  for (int i = 0; i < 249; ++i) {
    sum += " + 1";
  }
  CHECK(parsed(sum).starts_with("(+"));
  CHECK(parsed(sum + " + 1") == "the formula has more than 500 parts");
  std::string nots;
  for (int i = 0; i < 1'000; ++i) {
    nots += "not ";
  }
  CHECK(parsed(nots + "a") == "the formula is nested more than 60 deep");
}

}  // namespace
}  // namespace heelrule
