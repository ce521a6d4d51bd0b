#include "tests/laws/random_rules.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "engine/formula/syntax.hpp"
#include "engine/scoring/compile.hpp"
#include "tests/laws/random_formula.hpp"
#include "tests/laws/random_inspection.hpp"

namespace heelrule {
namespace {

Text plain(std::string words) { return {{{"", std::move(words), {}}}}; }

template <class T>
Located<T> here(T value) {
  return {std::move(value), {}};
}

std::vector<Level> levels(const std::vector<std::string>& names) {
  std::vector<Level> all;
  for (const std::string& name : names) {
    all.push_back({here(name), {}});
  }
  return all;
}

class RuleSetMaker {
 public:
  explicit RuleSetMaker(Dice& dice) : dice_(dice) {}

  RuleSet make() {
    rules_.name = "random";
    for (const char* name : {"first", "second"}) {
      rules_.sections.push_back({here<std::string>(name), plain(name), 0});
    }
    add_traits();
    add_derived();
    const std::size_t count = 1 + dice_.below(8);
    for (std::size_t i = 0; i < count; ++i) {
      add_rule(i);
    }
    add_grades();
    return std::move(rules_);
  }

 private:
  void add_trait(const std::string& kind_name, TraitKind kind, bool sides) {
    Trait trait;
    trait.name = fmt::format("{}_{}{}", kind_name, rules_.traits.size(), sides ? "_each" : "");
    trait.ask = plain(trait.name);
    trait.per = sides ? Per::foot : Per::pair;
    trait.kind = std::move(kind);
    rules_.traits.push_back(std::move(trait));
  }

  void add_traits() {
    MeasureKind measure;
    measure.unit = Unit::millimetre;
    const std::size_t lengths = 2 + dice_.below(3);
    for (std::size_t i = 0; i < lengths; ++i) {
      add_trait("length", measure, dice_.one_in(2));
    }
    add_trait("scale", ScaleKind{levels({"soft", "medium", "firm"})}, dice_.one_in(2));
    add_trait("choice", ChoiceKind{levels({"laces", "hook and loop"})}, dice_.one_in(2));
    add_trait("answer", AnswerKind{}, dice_.one_in(2));
    add_trait("answer", AnswerKind{}, false);
    if (dice_.one_in(3)) {
      Trait trait;
      trait.name = "fibres";
      trait.ask = plain("fibres");
      trait.kind = FibresKind{};
      rules_.traits.push_back(trait);
    }
  }

  void add_derived() {
    const std::size_t count = dice_.below(5);
    for (std::size_t i = 0; i < count; ++i) {
      const Wanted wanted =
          dice_.pick<Wanted>({Wanted::length, Wanted::length, Wanted::number, Wanted::yes_no});
      DerivedKind derived;
      derived.formula =
          here(random_formula(rules_, wanted, Sides::allowed, 1 + dice_.below(3), dice_));
      derived.formula.where = {0, 0, static_cast<std::uint32_t>(derived.formula.value.size())};
      const bool sides = reads_sides(derived.formula);
      add_trait(wanted == Wanted::length   ? "length"
                : wanted == Wanted::number ? "number"
                                           : "answer",
                derived, sides);
      rules_.traits.back().per = Per::pair;
    }
  }

  bool reads_sides(const Located<std::string>& formula) const {
    Diagnostics diagnostics;
    const auto syntax = parse_formula(formula, diagnostics);
    return syntax && reads_sides(*syntax);
  }

  static bool reads_sides(const Syntax& syntax) {
    static const std::set<std::string> of_sides{"left",    "right",         "larger",
                                                "smaller", "mean_of_sides", "difference"};
    if (syntax.form == Form::name) {
      return syntax.name.ends_with("_each");
    }
    return !(syntax.form == Form::call && of_sides.count(syntax.name) > 0) &&
           std::any_of(syntax.parts.begin(), syntax.parts.end(),
                       [](const Syntax& part) { return reads_sides(part); });
  }

  void add_rule(std::size_t number) {
    Rule rule;
    rule.name = fmt::format("rule_{}", number);
    rule.section = here<std::string>(dice_.one_in(2) ? "first" : "second");
    rule.weight = here(dice_.one_in(8) ? 0.0 : static_cast<double>(1 + dice_.below(12'000)));
    if (dice_.one_in(4)) {
      rule.caps = here<std::string>(dice_.one_in(2) ? "middle" : "low");
    }
    std::size_t read = dice_.below(rules_.traits.size());
    while (rules_.traits[read].name == "fibres") {
      read = dice_.below(rules_.traits.size());
    }
    const Trait& trait = rules_.traits[read];
    rule.reads = here(trait.name);
    if (trait.name.ends_with("_each")) {
      rule.sides = dice_.pick<SideRule>({SideRule::worse, SideRule::mean, SideRule::each});
    }
    if (dice_.one_in(4)) {
      rule.applies =
          here(random_formula(rules_, Wanted::yes_no, Sides::none, 1 + dice_.below(2), dice_));
      rule.applies->where = {0, 0, static_cast<std::uint32_t>(rule.applies->value.size())};
    }
    if (trait.name.starts_with("length") || trait.name.starts_with("number")) {
      add_bands(rule, trait.name.starts_with("length") ? Unit::millimetre : Unit::count);
    } else {
      add_levels(rule, trait);
    }
    rule.because = plain("because");
    rule.source = plain("common practice");
    rules_.rules.push_back(std::move(rule));
  }

  double credit() {
    static const std::vector<double> usual{0, 0, 1'000'000, 1'000'000, 500'000, 600'000, 333'333};
    return dice_.pick(usual);
  }

  void add_bands(Rule& rule, Unit unit) {
    std::set<double> cuts;
    const std::size_t count = dice_.below(5);
    while (cuts.size() < count) {
      cuts.insert(unit == Unit::count ? static_cast<double>(dice_.below(12)) / 4
                                      : random_length(dice_, dice_.one_in(3) ? -60 : 0));
    }
    std::size_t at = 0;
    for (const double cut : cuts) {
      Band band;
      band.name = here(fmt::format("band_{}", at));
      band.cut = Cut{{cut, unit}, dice_.one_in(2), {}};
      band.earns = here(Credit{credit(), 0});
      band.earns.value.to = at > 0 && dice_.one_in(4) ? credit() : band.earns.value.from;
      rule.bands.push_back(band);
      ++at;
    }
    Band last;
    last.name = here(fmt::format("band_{}", at));
    const double flat = credit();
    last.earns = here(Credit{flat, flat});
    rule.bands.push_back(last);
  }

  void add_levels(Rule& rule, const Trait& trait) {
    std::vector<std::string> names;
    for (const Level& level : levels_of(trait.kind)) {
      names.push_back(level.name.value);
    }
    if (names.empty()) {
      names = {"yes", "no"};
    }
    dice_.shuffle(names);
    for (const std::string& name : names) {
      const double flat = credit();
      rule.levels.push_back({here(name), here(Credit{flat, flat}), {}});
    }
  }

  void add_grade(const char* name, double from) {
    Grade grade;
    grade.name = here<std::string>(name);
    grade.from = here(from);
    grade.means = plain(name);
    rules_.grades.push_back(std::move(grade));
  }

  void add_grades() {
    const double middle = static_cast<double>(40'000 + dice_.below(20'000));
    const double best = dice_.one_in(3) ? 50'000 + middle / 2 : 80'000;
    add_grade("high", best);
    add_grade("middle", middle);
    add_grade("low", 0);
  }

  Dice& dice_;
  RuleSet rules_;
};

}  // namespace

RuleSet random_rules(Dice& dice) { return RuleSetMaker(dice).make(); }

Program random_program(Dice& dice) {
  while (true) {
    auto program = compile(random_rules(dice));
    if (program) {
      return *std::move(program);
    }
  }
}

}  // namespace heelrule
