#include "engine/quantity/size_formula.hpp"

#include <fmt/format.h>

#include <cstdlib>

#include "engine/quantity/decimal.hpp"

namespace heelrule {
namespace {

// A formula `size = factor · foot length in the unit + constant`.
struct Formula {
  double factor;
  double millimetres_in_unit;
  std::string_view unit;
  int constant;
};

std::optional<Formula> formula_of(SizeSystem system, Wearer wearer) {
  constexpr double inch = 25.4;
  if (wearer == Wearer::child) {
    return system == SizeSystem::european ? std::optional(Formula{1.62, 10, "cm", 0})
                                          : std::nullopt;
  }
  switch (system) {
    case SizeSystem::european:
      return Formula{1.5, 10, "cm", 2};
    case SizeSystem::british:
      return Formula{3, inch, "inches", -23};
    case SizeSystem::american_men:
      return Formula{3, inch, "inches", -22};
    case SizeSystem::american_women:
      return Formula{3, inch, "inches", -21};
    default:
      return std::nullopt;
  }
}

double worked_out(const Formula& formula, Millimetres foot) {
  return formula.factor * foot.value() / formula.millimetres_in_unit + formula.constant;
}

std::string constant_in_words(int constant) {
  return constant == 0 ? "" : fmt::format(" {} {}", constant < 0 ? '-' : '+', std::abs(constant));
}

}  // namespace

std::optional<double> size_by_formula(SizeSystem system, Millimetres foot, Wearer wearer) {
  const auto formula = formula_of(system, wearer);
  return formula ? std::optional(worked_out(*formula, foot)) : std::nullopt;
}

std::string explain_size(SizeSystem system, Millimetres foot, Wearer wearer) {
  const auto size = size_for(system, foot, wearer);
  return size ? fmt::format("{} = {}: {}", facts(system).mark, size_reason(system, foot, wearer),
                            show(*size))
              : size.problem().message;
}

std::string size_reason(SizeSystem system, Millimetres foot, Wearer wearer) {
  if (!size_for(system, foot, wearer)) {
    return {};
  }
  const auto formula = formula_of(system, wearer);
  if (!formula) {
    const bool in_cm = system == SizeSystem::japanese;
    return fmt::format("foot length in {}, to the nearest {}", in_cm ? "cm" : "mm",
                       in_cm ? "0.5 cm" : "5 mm");
  }
  const bool by_table = system != SizeSystem::european || wearer == Wearer::child;
  return fmt::format("{} · foot length in {}{} = {}{}", formula->factor, formula->unit,
                     constant_in_words(formula->constant),
                     with_places(worked_out(*formula, foot), 2),
                     by_table ? "; by the table of ISO 19407" : "");
}

}  // namespace heelrule
