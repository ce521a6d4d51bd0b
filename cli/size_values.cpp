#include "cli/size_values.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "engine/quantity/quantity.hpp"
#include "engine/quantity/range.hpp"

namespace heelrule {
namespace {

constexpr std::string_view no_pair_seen_yet = "not_yet_seen";

constexpr std::array<MeasureOption, 15> options{{
    {"standing-left", "foot_length", Side::left},
    {"standing-right", "foot_length", Side::right},
    {"seated-left", "foot_length_seated", Side::left},
    {"seated-right", "foot_length_seated", Side::right},
    {"width-left", "foot_width", Side::left},
    {"width-right", "foot_width", Side::right},
    {"seated-width-left", "foot_width_seated", Side::left},
    {"seated-width-right", "foot_width_seated", Side::right},
    {"girth-left", "ball_girth", Side::left},
    {"girth-right", "ball_girth", Side::right},
    {"in-sock-left", "sock_foot_length", Side::left},
    {"in-sock-right", "sock_foot_length", Side::right},
    {"inside-left", "insole_length", Side::left},
    {"inside-right", "insole_length", Side::right},
    {"age", "child_age", Side::none},
}};

Problem of_option(std::string_view option, const Problem& problem) {
  return {fmt::format("`--{}`: {}", option, problem.message), problem.hint};
}

Parsed<double> reading_of(const std::string& text, const MeasureKind& measure) {
  const auto quantity = parse_quantity_in(text, measure.unit);
  if (!quantity) {
    return quantity.problem();
  }
  if (measure.plausible && !holds(measure.plausible->value, quantity->stored)) {
    return Problem{fmt::format("`{}` is not plausible, which is {}", text,
                               show(measure.plausible->value, measure.unit, 9)),
                   "check the value and its unit; if it is true, write it in a record with "
                   "`confirmed: yes`"};
  }
  return quantity->stored;
}

Parsed<Observation> observation_of(const GivenMeasure& given, const RuleSet& rules) {
  const auto option = std::find_if(options.begin(), options.end(), [&](const MeasureOption& one) {
    return one.name == given.option;
  });
  const auto trait = rules.find_trait(option->trait);
  const auto* measure = trait ? std::get_if<MeasureKind>(&rules.traits[*trait].kind) : nullptr;
  if (measure == nullptr) {
    return Problem{
        fmt::format("`--{}`: `{}` does not ask for `{}`", given.option, rules.name, option->trait),
        option->side == Side::none ? "leave it out, or write `--for child`"
                                   : "leave it out, or use another rule set"};
  }
  Readings readings;
  readings.unit = measure->unit;
  for (const std::string& text : given.readings) {
    const auto reading = reading_of(text, *measure);
    if (!reading) {
      return of_option(given.option, reading.problem());
    }
    readings.stored.push_back(*reading);
  }
  return Observation{*trait, option->side, std::move(readings), {}, {}};
}

}  // namespace

std::span<const MeasureOption> measure_options() { return options; }

Parsed<Inspection> inspection_of(std::span<const GivenMeasure> given, std::string_view date,
                                 const RuleSet& rules) {
  Inspection inspection;
  inspection.rules = rules.name;
  inspection.date = date;
  for (const GivenMeasure& one : given) {
    auto observation = observation_of(one, rules);
    if (!observation) {
      return observation.problem();
    }
    inspection.observations.push_back(*observation);
  }
  if (const auto question = rules.find_trait(no_pair_seen_yet);
      question && *question < rules.safety.size()) {
    inspection.observations.push_back({*question, Side::none, Answer{true}, {}, {}});
  }
  std::sort(inspection.observations.begin(), inspection.observations.end(),
            [](const Observation& a, const Observation& b) {
              return std::pair(a.trait, a.side) < std::pair(b.trait, b.side);
            });
  return inspection;
}

}  // namespace heelrule
