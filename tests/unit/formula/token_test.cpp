#include "engine/formula/token.hpp"

#include <catch2/catch.hpp>

#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

// The tokens of a formula, each in its own brackets; or all that is said against it.
std::string split(const std::string& text) {
  Sources sources;
  const auto source = sources.add("f", text);
  Diagnostics diagnostics;
  const Located<std::string> formula{text, {source, 0, static_cast<std::uint32_t>(text.size())}};
  const auto tokens = split_formula(formula, diagnostics);
  CHECK(tokens.has_value() != diagnostics.has_errors());
  std::string all;
  for (const Diagnostic& diagnostic : diagnostics.by_place()) {
    all += std::string(sources.text(diagnostic.where)) + ": " + diagnostic.message + " / " +
           diagnostic.hint + "\n";
  }
  for (std::size_t i = 0; tokens && i < tokens->size(); ++i) {
    const Token& token = (*tokens)[i];
    switch (token.kind) {
      case TokenKind::value:
        all += "[" + show(token.value.stored, token.value.unit, 9) + "]";
        break;
      case TokenKind::quoted:
        all += "[\"" + token.text + "\"]";
        break;
      case TokenKind::end:
        break;
      default:
        all += "[" + token.text + "]";
        CHECK(sources.text(token.where) == token.text);
    }
  }
  return all;
}

TEST_CASE("a formula is words, values, quoted texts and signs") {
  CHECK(split("insole_length - foot_length") == "[insole_length][-][foot_length]");
  CHECK(split("a<=b>=c<d>e") == "[a][<=][b][>=][c][<][d][>][e]");
  CHECK(split("fastening is not \"hook and loop\"") == "[fastening][is][not][\"hook and loop\"]");
  CHECK(split("  \n\t") == "");
}

TEST_CASE("a value takes the unit that follows it, with or without a blank") {
  CHECK(split("6 mm") == "[6 mm]");
  CHECK(split("6mm-2cm") == "[6 mm][-][2 cm]");
  CHECK(split("7° + 50 % * 0.3 N·m/°") == "[7°][+][50 %][*][0.3 N·m/°]");
  CHECK(split("9.6 in / 2") == "[9.6 in][/][2]");
  CHECK(split("5 minutes") == "[5 min]");
  CHECK(split("5 m") == "[5 m]");
}

TEST_CASE("a word of the language after a number is no unit") {
  CHECK(split("if a > 2 then 1 else 0") == "[if][a][>][2][then][1][else][0]");
  CHECK(split("a > 2 and b < 3 or c is 1") == "[a][>][2][and][b][<][3][or][c][is][1]");
}

TEST_CASE("a comma parts the values of a call, and is no decimal sign there") {
  CHECK(split("max(1,2)") == "[max][(][1][,][2][)]");
  CHECK(split("max((1),min(2,3),4)") == "[max][(][(][1][)][,][min][(][2][,][3][)][,][4][)]");
  CHECK(split("1,5 mm") == "1,5 mm: `1,5` is not a number / write a decimal point: `1.5`\n");
  CHECK(split("(1,5 mm)") == "1,5 mm: `1,5` is not a number / write a decimal point: `1.5`\n");
}

TEST_CASE("every fault is reported at its place, a run of foreign signs once") {
  CHECK(split("6 mn ≥≥ 7 paces") ==
        "6 mn: `mn` is no unit known here / did you mean `mm`?\n"
        "≥≥: `≥≥` is no sign of a formula / use `+ - * / ( ) < <= > >=` and the words `and or not "
        "is if then else`\n"
        "7 paces: `paces` is no unit known here / write a unit such as `mm`, `cm`, `°`, `g` or "
        "`%`\n");
  CHECK(split("a == b") == "==: `==` is no sign of a formula / write `is` or `is not`\n");
  CHECK(split("a is \"b") == "\"b: this text has no closing quote / write the closing `\"`\n");
}

TEST_CASE("a place inside a text that is folded or escaped is the whole text") {
  Diagnostics diagnostics;
  split_formula({"a $ b", {0, 10, 90}}, diagnostics);
  CHECK(diagnostics.by_place()[0].where == Span{0, 10, 90});
}

}  // namespace
}  // namespace heelrule
