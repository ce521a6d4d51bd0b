#include "engine/doubt/doubtful_reading.hpp"

#include <algorithm>
#include <optional>

#include "engine/model/standard_uncertainty.hpp"
#include "engine/quantity/deviate.hpp"
#include "engine/quantity/random_stream.hpp"
#include "engine/scoring/rule_needs.hpp"

namespace heelrule {
namespace {

// By input: whether a rule depends on it.
std::vector<bool> inputs_that_count(const Program& program) {
  std::vector<bool> counts(program.inputs.size(), false);
  for (std::size_t rule = 0; rule < program.rule_programs.size(); ++rule) {
    for (const Register input : inputs_needed(program, rule)) {
      counts[input] = true;
    }
  }
  return counts;
}

std::optional<std::variant<Spread, OneLevelOff>> doubt_of(const Trait& trait, const Value& value) {
  const auto* measure = std::get_if<MeasureKind>(&trait.kind);
  const auto* readings = std::get_if<Readings>(&value);
  if (measure != nullptr && readings != nullptr) {
    const double uncertainty = standard_uncertainty(*readings, *measure);
    return uncertainty > 0 ? std::optional(std::variant<Spread, OneLevelOff>(Spread{uncertainty}))
                           : std::nullopt;
  }
  const auto* scale = std::get_if<ScaleKind>(&trait.kind);
  if (scale != nullptr && std::holds_alternative<LevelSeen>(value) && scale->confusion.value > 0) {
    return OneLevelOff{scale->confusion.value, scale->levels.size() - 1};
  }
  return std::nullopt;
}

bool is_one_reading(const Observation& left, const Observation& right) {
  return left.where == right.where && left.where != Span{};
}

}  // namespace

std::vector<DoubtfulReading> doubtful_readings(const Program& program,
                                               const Inspection& inspection) {
  std::vector<DoubtfulReading> found;
  const std::vector<bool> counts = inputs_that_count(program);
  for (Register i = 0; i < program.inputs.size(); ++i) {
    const RowInput& input = program.inputs[i];
    const std::size_t trait = input.input.trait;
    const Observation* seen = inspection.find(trait, input.side);
    if (!counts[i] || input.input.facet != Facet::value || seen == nullptr) {
      continue;
    }
    const auto doubt = doubt_of(program.rules.traits[trait], seen->value);
    if (!doubt) {
      continue;
    }
    const Observation* left =
        input.side == Side::right ? inspection.find(trait, Side::left) : nullptr;
    if (left != nullptr && is_one_reading(*left, *seen) && !found.empty() &&
        found.back().trait == trait) {
      found.back().inputs.push_back(i);
      found.back().side = Side::none;
    } else {
      found.push_back({trait, input.side, {i}, plain_number(seen->value), *doubt});
    }
  }
  return found;
}

double drawn(const DoubtfulReading& reading, std::uint32_t word) {
  const double fraction = open_fraction(word);
  if (const auto* spread = std::get_if<Spread>(&reading.doubt)) {
    return reading.value + spread->uncertainty * normal_deviate(fraction);
  }
  const double half = std::get<OneLevelOff>(reading.doubt).chance / 2;
  return fraction < half       ? a_little_off(reading, false)
         : fraction > 1 - half ? a_little_off(reading, true)
                               : reading.value;
}

double a_little_off(const DoubtfulReading& reading, bool up) {
  if (const auto* spread = std::get_if<Spread>(&reading.doubt)) {
    return reading.value + (up ? coverage_factor : -coverage_factor) * spread->uncertainty;
  }
  const auto highest = static_cast<double>(std::get<OneLevelOff>(reading.doubt).highest);
  return std::clamp(reading.value + (up ? 1 : -1), 0.0, highest);
}

}  // namespace heelrule
