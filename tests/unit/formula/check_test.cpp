// What sound formulas come to; what is said of others is in tests/diagnostics.
#include "engine/formula/check.hpp"

#include <catch2/catch.hpp>

#include "engine/formula/type_words.hpp"

namespace heelrule {
namespace {

struct Known {
  RuleSet rules;
  std::vector<std::optional<TraitType>> types;

  void add(std::string name, TraitKind kind, std::optional<TraitType> type) {
    Trait trait;
    trait.name = std::move(name);
    trait.kind = std::move(kind);
    rules.traits.push_back(std::move(trait));
    types.push_back(type);
  }
};

Type number(Unit unit) { return {Type::Kind::number, facts(unit).dimension, 0, false}; }

Known known() {
  const std::vector<Level> levels{
      {{"soft", {}}, {}}, {{"firm", {}}, {}}, {{"hook and loop", {}}, {}}};
  Known all;
  all.add("length", MeasureKind{}, TraitType{number(Unit::millimetre), true});
  all.add("width", MeasureKind{}, TraitType{number(Unit::millimetre), false});
  all.add("force", MeasureKind{}, TraitType{number(Unit::newton), false});
  all.add("tilt", MeasureKind{}, TraitType{number(Unit::degree), true});
  all.add("counter", ScaleKind{levels}, TraitType{{Type::Kind::level, {}, 4, true}, true});
  all.add("fastening", ChoiceKind{levels}, TraitType{{Type::Kind::level, {}, 5, false}, false});
  all.add("lined", AnswerKind{}, TraitType{{Type::Kind::yes_no, {}, 0, false}, false});
  all.add("sock", FibresKind{}, TraitType{{Type::Kind::fibres, {}, 0, false}, false});
  all.add("size", ShoeSizeKind{}, TraitType{{Type::Kind::shoe_size, {}, 0, false}, false});
  all.add("range", SockRangeKind{}, TraitType{{Type::Kind::sock_range, {}, 0, false}, true});
  all.add("broken", UnreadKind{}, std::nullopt);
  return all;
}

// The type of a formula in words, with `of two sides` where it has them; or what is wrong with it.
std::string type_of(const std::string& text) {
  static const Known all = known();
  Diagnostics diagnostics;
  const auto syntax =
      parse_formula({text, {0, 0, static_cast<std::uint32_t>(text.size())}}, diagnostics);
  REQUIRE(syntax);
  const auto expression = check_formula(*syntax, all.rules, all.types, diagnostics);
  if (!expression) {
    return diagnostics.empty() ? "nothing" : diagnostics.by_place()[0].message;
  }
  for (std::size_t i = 0; i < expression->steps.size(); ++i) {
    for (const std::uint32_t operand : expression->steps[i].operands) {
      CHECK(operand < i);
    }
  }
  return in_words(expression->type, all.rules) + (expression->has_sides ? " of two sides" : "");
}

TEST_CASE("arithmetic carries units along") {
  CHECK(type_of("length - 6 mm") == "a length of two sides");
  CHECK(type_of("width + 2 cm") == "a length");
  CHECK(type_of("length / width") == "a number of two sides");
  CHECK(type_of("2 * width * 50 %") == "a length");
  CHECK(type_of("force * width / tilt") == "a bending stiffness of two sides");
  CHECK(type_of("width * width") == "a length²");
  CHECK(type_of("-tilt") == "an angle of two sides");
}

TEST_CASE("a result has sides if any part of it has") {
  CHECK(type_of("width") == "a length");
  CHECK(type_of("if lined then width else length") == "a length of two sides");
  CHECK(type_of("larger(length) - width") == "a length");
  CHECK(type_of("left(length) - right(length)") == "a length");
  CHECK(type_of("difference(length) > 5 mm") == "yes or no");
}

TEST_CASE("comparisons and logic are yes or no") {
  CHECK(type_of("length > 24 cm and not lined") == "yes or no of two sides");
  CHECK(type_of("lined is yes or fastening is \"hook and loop\"") == "yes or no");
  CHECK(type_of("counter >= firm") == "yes or no of two sides");
  CHECK(type_of("counter is not counter") == "yes or no of two sides");
}

TEST_CASE("min, max and mean keep the kind of what they are given") {
  CHECK(type_of("min(width, 3 mm, 4 cm)") == "a length");
  CHECK(type_of("mean(tilt, 3°)") == "an angle of two sides");
  CHECK(type_of("abs(width - 3 mm)") == "a length");
  CHECK(type_of("larger(counter)") == "a level of `counter`");
}

TEST_CASE("the tangent takes an angle, and its inverse a number") {
  CHECK(type_of("width * tan(tilt)") == "a length of two sides");
  CHECK(type_of("atan(width / 24 cm)") == "an angle");
}

TEST_CASE("fibre contents and marked sizes give numbers and lengths") {
  CHECK(type_of("share(sock, cotton)") == "a number");
  CHECK(type_of("share(sock, \"polyamide filament\") > 20 %") == "yes or no");
  CHECK(type_of("moisture(sock)") == "a number");
  CHECK(type_of("longest_foot(size) - shortest_foot(size)") == "a length");
  CHECK(type_of("shortest_foot(range)") == "a length of two sides");
}

TEST_CASE("a whole value is in words for what it is") {
  CHECK(type_of("sock") == "a fibre content");
  CHECK(type_of("size") == "a shoe size");
  CHECK(type_of("range") == "a sock range of two sides");
  CHECK(type_of("fastening") == "a choice of `fastening`");
}

TEST_CASE("a level goes before a trait of the same name, to the right of its scale alone") {
  CHECK(type_of("counter is firm") == "yes or no of two sides");
  CHECK(type_of("firm is counter") == "there is no trait `firm`");
  CHECK(type_of("counter is width") == "a level of `counter` and a length cannot be compared");
}

TEST_CASE("what reads a trait that could not be checked fails without a word of its own") {
  CHECK(type_of("broken + 1 mm") == "nothing");
  CHECK(type_of("broken + unknown") == "there is no trait `unknown`");
}

}  // namespace
}  // namespace heelrule
