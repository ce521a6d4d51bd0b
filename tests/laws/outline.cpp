#include "tests/laws/outline.hpp"

#include <fmt/format.h>

#include "engine/quantity/decimal.hpp"

namespace heelrule {

std::string outline(const RuleSet& rules) {
  std::string text;
  for (const Trait& trait : rules.traits) {
    const auto* derived = std::get_if<DerivedKind>(&trait.kind);
    text += fmt::format("{}{}{}\n", trait.name, derived == nullptr ? "" : ": ",
                        derived == nullptr ? "" : derived->formula.value);
  }
  for (const Rule& rule : rules.rules) {
    text +=
        fmt::format("{} reads {} weight {} sides {} caps {} applies {}\n", rule.name,
                    rule.reads.value, rule.weight.value, static_cast<int>(rule.sides),
                    rule.caps ? rule.caps->value : "-", rule.applies ? rule.applies->value : "-");
    for (const Band& band : rule.bands) {
      text += fmt::format("  {} {} earns {} .. {}\n",
                          !band.cut                 ? "rest"
                          : band.cut->belongs_below ? "up to"
                                                    : "below",
                          band.cut ? shortest(band.cut->at.stored) : "", band.earns.value.from,
                          band.earns.value.to);
    }
    for (const LevelCredit& level : rule.levels) {
      text += fmt::format("  {} earns {}\n", level.level.value, level.earns.value.from);
    }
  }
  for (const Grade& grade : rules.grades) {
    text += fmt::format("{} from {}\n", grade.name.value, grade.from.value);
  }
  return text;
}

std::string outline(const RuleSet& rules, const Inspection& inspection) {
  std::string text;
  for (const Observation& seen : inspection.observations) {
    text += fmt::format("{} {}:", rules.traits[seen.trait].name, static_cast<int>(seen.side));
    if (const auto* readings = std::get_if<Readings>(&seen.value)) {
      text += fmt::format(" {}", fmt::join(readings->stored, " "));
    } else if (const auto* answer = std::get_if<Answer>(&seen.value)) {
      text += answer->yes ? " yes" : " no";
    } else if (const auto* level = std::get_if<LevelSeen>(&seen.value)) {
      text += fmt::format(" level {}", level->level);
    } else if (const auto* fibres = std::get_if<FibreContent>(&seen.value)) {
      text += " " + show(*fibres);
    } else {
      text += " not seen";
    }
    text += "\n";
  }
  return text;
}

}  // namespace heelrule
