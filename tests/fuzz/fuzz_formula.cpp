// Reads bytes as a formula over a trait of each kind.
#include "engine/formula/check.hpp"
#include "tests/fuzz/fuzzed_text.hpp"

namespace heelrule {
namespace {

Trait trait(std::string name, TraitKind kind) {
  Trait made;
  made.name = std::move(name);
  made.kind = std::move(kind);
  return made;
}

RuleSet traits_of_each_kind() {
  const std::vector<Level> levels{{{"soft", {}}, {}}, {{"firm", {}}, {}}};
  RuleSet rules;
  rules.traits = {trait("length", MeasureKind{Unit::millimetre, {}, {}}),
                  trait("tilt", MeasureKind{Unit::degree, {}, {}}),
                  trait("scale", ScaleKind{levels}),
                  trait("choice", ChoiceKind{levels}),
                  trait("answer", AnswerKind{}),
                  trait("fibres", FibresKind{}),
                  trait("size", ShoeSizeKind{}),
                  trait("age", MeasureKind{Unit::year, {}, {}})};
  return rules;
}

}  // namespace
}  // namespace heelrule

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace heelrule;
  static const RuleSet rules = traits_of_each_kind();
  static const std::vector<std::optional<TraitType>> types{
      TraitType{{}, true},
      TraitType{{Type::Kind::number, facts(Unit::degree).dimension, 0, false}, false},
      TraitType{{Type::Kind::level, {}, 2, true}, true},
      TraitType{{Type::Kind::level, {}, 3, false}, false},
      TraitType{{Type::Kind::yes_no, {}, 0, false}, true},
      TraitType{{Type::Kind::fibres, {}, 0, false}, false},
      TraitType{{Type::Kind::shoe_size, {}, 0, false}, true},
      TraitType{{Type::Kind::number, facts(Unit::year).dimension, 0, false}, false}};
  const std::string text = fuzzed_text(data, size);
  Sources sources;
  const auto source = sources.add("formula", text);
  const Located<std::string> formula{text, {source, 0, static_cast<std::uint32_t>(text.size())}};
  Diagnostics diagnostics;
  const auto syntax = parse_formula(formula, diagnostics);
  const auto expression = syntax ? check_formula(*syntax, rules, types, diagnostics) : std::nullopt;
  must_be_explained(expression.has_value(), diagnostics, sources);
  for (std::size_t i = 0; expression && i < expression->steps.size(); ++i) {
    for (const std::uint32_t operand : expression->steps[i].operands) {
      must(operand < i);
    }
  }
  return 0;
}
