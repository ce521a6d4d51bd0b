#include "engine/reading/plain_value.hpp"

#include <cmath>
#include <limits>

#include "engine/quantity/plain_quantity.hpp"
#include "engine/quantity/settle.hpp"

namespace heelrule {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr double not_seen = std::numeric_limits<double>::quiet_NaN();

}  // namespace

PlainValue::PlainValue(const Trait& trait) : trait_(&trait), least_(-infinity), most_(infinity) {
  if (const auto* measure = std::get_if<MeasureKind>(&trait.kind)) {
    kind_ = Kind::measure;
    written_ = measure->unit;
    unit_ = &facts(measure->unit);
    is_count_ = measure->unit == Unit::count;
    if (measure->plausible) {
      least_ = measure->plausible->value.from.stored;
      most_ = measure->plausible->value.to.stored;
    }
  } else if (std::holds_alternative<AnswerKind>(trait.kind)) {
    kind_ = Kind::answer;
  } else if (!levels_of(trait.kind).empty()) {
    kind_ = Kind::levels;
  }
}

std::optional<double> PlainValue::read(std::string_view text, bool confirmed) const {
  if (kind_ == Kind::measure) {
    if (const auto value = reading(text, false, confirmed)) {
      return settled(*value);
    }
  }
  if (text == "not seen") {
    return not_seen;
  }
  switch (kind_) {
    case Kind::measure:
      return std::nullopt;
    case Kind::levels:
      return level(text);
    case Kind::answer:
      return text == "yes" ? std::optional(1.0) : text == "no" ? std::optional(0.0) : std::nullopt;
    case Kind::other:
      return std::nullopt;
  }
  return std::nullopt;
}

std::optional<double> PlainValue::reading(std::string_view text, bool unit_follows,
                                          bool confirmed) const {
  auto value = plain_quantity(text, *unit_, unit_->symbol);
  if (!value && unit_follows) {
    value = plain_quantity(text, *unit_, {});
  }
  const bool fits = value && (confirmed || (*value >= least_ && *value <= most_)) &&
                    (!is_count_ || *value == std::floor(*value));
  return fits ? value : std::nullopt;
}

std::optional<double> PlainValue::level(std::string_view text) const {
  const std::vector<Level>& levels = levels_of(trait_->kind);
  for (std::size_t i = 0; i < levels.size(); ++i) {
    if (levels[i].name.value == text) {
      return static_cast<double>(i);
    }
  }
  return std::nullopt;
}

Value PlainValue::value(double number) const {
  if (number != number) {
    return NotSeen{};
  }
  switch (kind_) {
    case Kind::measure:
      return Readings{{number}, written_, std::nullopt, false};
    case Kind::answer:
      return Answer{number == 1};
    case Kind::levels:
    case Kind::other:
      break;
  }
  return LevelSeen{static_cast<std::size_t>(number)};
}

}  // namespace heelrule
