#include "engine/scoring/derive_types.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/formula/check.hpp"
#include "engine/formula/type_words.hpp"

namespace heelrule {
namespace {

Type type_of_recorded(const TraitKind& kind, std::size_t trait) {
  Type type;
  if (const auto* measure = std::get_if<MeasureKind>(&kind)) {
    type.dimension = facts(measure->unit).dimension;
  } else if (std::holds_alternative<AnswerKind>(kind)) {
    type.kind = Type::Kind::yes_no;
  } else if (std::holds_alternative<FibresKind>(kind)) {
    type.kind = Type::Kind::fibres;
  } else if (std::holds_alternative<ShoeSizeKind>(kind)) {
    type.kind = Type::Kind::shoe_size;
  } else if (std::holds_alternative<SockRangeKind>(kind)) {
    type.kind = Type::Kind::sock_range;
  } else {
    type.kind = Type::Kind::level;
    type.scale = static_cast<std::uint32_t>(trait);
    type.ordered = std::holds_alternative<ScaleKind>(kind);
  }
  return type;
}

class Deriver {
 public:
  Deriver(const RuleSet& rules, Diagnostics& diagnostics)
      : rules_(rules), diagnostics_(diagnostics), state_(rules.traits.size(), State::untouched) {
    found_.types.resize(rules.traits.size());
    found_.expressions.resize(rules.traits.size());
    syntax_.resize(rules.traits.size());
  }

  TraitTypes derive() {
    for (std::size_t i = 0; i < rules_.traits.size(); ++i) {
      const Trait& trait = rules_.traits[i];
      if (const auto* derived = std::get_if<DerivedKind>(&trait.kind)) {
        if (!derived->formula.value.empty()) {
          syntax_[i] = parse_formula(derived->formula, diagnostics_);
        }
      } else if (!std::holds_alternative<UnreadKind>(trait.kind)) {
        found_.types[i] = TraitType{type_of_recorded(trait.kind, i), has_sides(trait.per)};
      }
    }
    for (std::size_t i = 0; i < rules_.traits.size(); ++i) {
      if (std::holds_alternative<DerivedKind>(rules_.traits[i].kind)) {
        visit(i);
      }
    }
    return std::move(found_);
  }

 private:
  enum class State : std::uint8_t { untouched, open, done };

  // Depth first without recursion: a chain of derived traits may be as long as its file.
  void visit(std::size_t first) {
    std::vector<std::size_t> path{first};
    while (!path.empty()) {
      const std::size_t trait = path.back();
      if (state_[trait] == State::untouched) {
        state_[trait] = State::open;
      }
      if (const auto next = next_unchecked(trait, path)) {
        path.push_back(*next);
        continue;
      }
      if (state_[trait] == State::open) {
        check(trait);
        state_[trait] = State::done;
      }
      path.pop_back();
    }
  }

  // A derived trait that `trait` reads and that was not checked yet. One that is still open closes
  // a circle.
  std::optional<std::size_t> next_unchecked(std::size_t trait,
                                            const std::vector<std::size_t>& path) {
    if (!syntax_[trait] || state_[trait] == State::done) {
      return std::nullopt;
    }
    std::vector<Located<std::string>> names;
    collect_names(*syntax_[trait], names);
    for (const Located<std::string>& name : names) {
      const auto read = rules_.find_trait(name.value);
      if (!read || !std::holds_alternative<DerivedKind>(rules_.traits[*read].kind)) {
        continue;
      }
      if (state_[*read] == State::untouched) {
        return read;
      }
      if (state_[*read] == State::open) {
        report_circle(name.where, *read, path);
        syntax_[trait].reset();
        return std::nullopt;
      }
    }
    return std::nullopt;
  }

  // The names that a formula reads; a level beside the scale that it belongs to is none.
  void collect_names(const Syntax& syntax, std::vector<Located<std::string>>& names) const {
    if (syntax.form == Form::name) {
      names.push_back({syntax.name, syntax.where});
    }
    const bool level = compares(syntax.form) && is_level_of(syntax.parts[1], syntax.parts[0]);
    for (std::size_t i = 0; i < (level ? 1 : syntax.parts.size()); ++i) {
      collect_names(syntax.parts[i], names);
    }
  }

  bool is_level_of(const Syntax& level, const Syntax& scale) const {
    const auto trait = scale.form == Form::name ? rules_.find_trait(scale.name) : std::nullopt;
    if (!trait || level.form != Form::name) {
      return false;
    }
    const std::vector<Level>& levels = levels_of(rules_.traits[*trait].kind);
    return std::any_of(levels.begin(), levels.end(),
                       [&](const Level& known) { return known.name.value == level.name; });
  }

  void report_circle(Span where, std::size_t first, const std::vector<std::size_t>& path) {
    std::string circle;
    const auto begin = std::find(path.begin(), path.end(), first);
    for (auto at = begin; at != path.end(); ++at) {
      circle += fmt::format("`{}` reads ", rules_.traits[*at].name);
    }
    circle += fmt::format("`{}`", rules_.traits[first].name);
    diagnostics_.error(where, "these formulas run in a circle: " + circle,
                       "let one of them read recorded traits only");
  }

  void check(std::size_t trait) {
    if (!syntax_[trait]) {
      return;
    }
    auto expression = check_formula(*syntax_[trait], rules_, found_.types, diagnostics_);
    if (!expression) {
      return;
    }
    const auto& derived = std::get<DerivedKind>(rules_.traits[trait].kind);
    if (!fits(derived, expression->type)) {
      return;
    }
    found_.types[trait] = TraitType{expression->type, expression->has_sides};
    found_.expressions[trait] = std::move(expression);
    found_.order.push_back(trait);
  }

  bool fits(const DerivedKind& derived, const Type& type) {
    using Kind = Type::Kind;
    if (type.kind != Kind::number && type.kind != Kind::yes_no && type.kind != Kind::level) {
      diagnostics_.error(derived.formula.where,
                         fmt::format("the result of this formula is {}", in_words(type, rules_)),
                         "a derived trait is a measure, a level, or yes or no");
      return false;
    }
    if (derived.shown &&
        (type.kind != Kind::number || facts(derived.shown->value).dimension != type.dimension)) {
      diagnostics_.error(
          derived.shown->where,
          fmt::format("the result of the formula is {}, which cannot be shown in `{}`",
                      in_words(type, rules_), facts(derived.shown->value).symbol),
          "leave `shown` out, or give a unit of the same kind");
      return false;
    }
    if (type.kind == Kind::number && !derived.shown && !usual_unit(type.dimension)) {
      diagnostics_.error(derived.formula.where,
                         fmt::format("the result of this formula is a {}, which no trait can hold",
                                     in_words(type.dimension)),
                         "a trait holds a length, an angle, a mass, a force, a time, a bending "
                         "stiffness or a number");
      return false;
    }
    return true;
  }

  const RuleSet& rules_;
  Diagnostics& diagnostics_;
  TraitTypes found_;
  std::vector<std::optional<Syntax>> syntax_;
  std::vector<State> state_;
};

}  // namespace

TraitTypes derive_types(const RuleSet& rules, Diagnostics& diagnostics) {
  return Deriver(rules, diagnostics).derive();
}

}  // namespace heelrule
