#include "engine/report/recorded_words.hpp"

#include <fmt/format.h>

#include "engine/quantity/decimal.hpp"

namespace heelrule {
namespace {

constexpr int most_places = 9;  // of what somebody wrote: all of it

Unit unit_of(const Trait& trait, const Readings& readings) {
  const auto* measure = std::get_if<MeasureKind>(&trait.kind);
  return measure == nullptr ? readings.unit : measure->unit;
}

std::string readings_in_words(const Trait& trait, const Readings& readings) {
  const Unit unit = unit_of(trait, readings);
  std::string words;
  for (std::size_t i = 0; i + 1 < readings.stored.size(); ++i) {
    words += with_places(in_unit(readings.stored[i], unit), most_places) + ", ";
  }
  words += show(readings.stored.back(), unit, most_places);
  if (readings.stored.size() > 1) {
    words += fmt::format(", mean {}", show(mean(readings), unit));
  }
  return readings.confirmed ? words + ", confirmed" : words;
}

}  // namespace

std::string recorded_words(const RuleSet& rules, const Observation& seen) {
  const Trait& trait = rules.traits[seen.trait];
  struct Teller {
    const Trait& trait;

    std::string operator()(const Readings& readings) const {
      return readings_in_words(trait, readings);
    }
    std::string operator()(const LevelSeen& seen) const {
      return in_words(levels_of(trait.kind)[seen.level].name.value);
    }
    std::string operator()(const Answer& answer) const { return answer.yes ? "yes" : "no"; }
    std::string operator()(const FibreContent& fibres) const { return show(fibres); }
    std::string operator()(const ShoeSize& size) const { return show(size); }
    std::string operator()(const SockRange& range) const { return show(range); }
    std::string operator()(const NotSeen& not_seen) const {
      return not_seen.reason.empty() ? "not seen" : "not seen: " + not_seen.reason;
    }
  };
  return std::visit(Teller{trait}, seen.value);
}

std::string recorded_doubt_words(const RuleSet& rules, const Observation& seen) {
  const Trait& trait = rules.traits[seen.trait];
  const auto* readings = std::get_if<Readings>(&seen.value);
  const auto* measure = std::get_if<MeasureKind>(&trait.kind);
  if (readings == nullptr || measure == nullptr || (!readings->doubt && !measure->doubt)) {
    return "";
  }
  return show(readings->doubt ? *readings->doubt : measure->doubt->value.stored, measure->unit,
              most_places);
}

}  // namespace heelrule
