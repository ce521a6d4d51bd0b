#include "tests/laws/random_inspection.hpp"

namespace heelrule {
namespace {

FibreContent random_fibres(Dice& dice) {
  const auto cotton = static_cast<double>(dice.below(21)) * 5;
  std::vector<NamedShare> parts;
  if (cotton > 0) {
    parts.push_back({"cotton", {cotton / 100, Unit::percent}});
  }
  if (cotton < 100) {
    parts.push_back({"elastane", {(100 - cotton) / 100, Unit::percent}});
  }
  return *fibre_content(parts);
}

void record(Inspection& inspection, std::size_t trait, Side side, Value value) {
  inspection.observations.push_back({trait, side, std::move(value), {}, {}});
}

std::vector<Side> sides_of(const Trait& trait) {
  return has_sides(trait.per) ? std::vector{Side::left, Side::right} : std::vector{Side::none};
}

}  // namespace

double random_length(Dice& dice, int lowest_tenth) {
  const int tenths =
      dice.one_in(3) ? static_cast<int>(dice.below(130)) : static_cast<int>(dice.below(25)) * 5;
  return (tenths + lowest_tenth) / 10.0;
}

Value random_value(const Trait& trait, Dice& dice) {
  if (std::holds_alternative<MeasureKind>(trait.kind)) {
    Readings readings;
    readings.unit = Unit::millimetre;
    const std::size_t count = dice.one_in(5) ? 2 + dice.below(2) : 1;
    for (std::size_t i = 0; i < count; ++i) {
      readings.stored.push_back(random_length(dice, 0));
    }
    return readings;
  }
  if (std::holds_alternative<AnswerKind>(trait.kind)) {
    return Answer{dice.one_in(2)};
  }
  if (std::holds_alternative<FibresKind>(trait.kind)) {
    return random_fibres(dice);
  }
  return LevelSeen{dice.below(levels_of(trait.kind).size())};
}

Inspection random_inspection(const RuleSet& rules, Dice& dice) {
  Inspection inspection;
  const std::size_t care = 2 + dice.below(6);
  for (std::size_t i = 0; i < rules.traits.size(); ++i) {
    const Trait& trait = rules.traits[i];
    if (std::holds_alternative<DerivedKind>(trait.kind)) {
      continue;
    }
    const Value both = random_value(trait, dice);
    for (const Side side : sides_of(trait)) {
      if (dice.one_in(care)) {
        if (dice.one_in(2)) {
          record(inspection, i, side, NotSeen{});
        }
        continue;
      }
      record(inspection, i, side, dice.one_in(2) ? both : random_value(trait, dice));
    }
  }
  return inspection;
}

Inspection completed(const RuleSet& rules, const Inspection& inspection, Dice& dice) {
  Inspection whole = inspection;
  whole.observations.clear();
  for (std::size_t i = 0; i < rules.traits.size(); ++i) {
    const Trait& trait = rules.traits[i];
    if (std::holds_alternative<DerivedKind>(trait.kind)) {
      continue;
    }
    for (const Side side : sides_of(trait)) {
      const Observation* seen = inspection.find(i, side);
      const bool is_there = seen != nullptr && !std::holds_alternative<NotSeen>(seen->value);
      record(whole, i, side, is_there ? seen->value : random_value(trait, dice));
    }
  }
  return whole;
}

}  // namespace heelrule
