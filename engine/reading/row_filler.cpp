#include "engine/reading/row_filler.hpp"

#include <algorithm>
#include <utility>

namespace heelrule {

RowFiller::RowFiller(const RuleSet& rules) : rules_(rules), known_(rules.traits.size()) {
  for (const Trait& trait : rules.traits) {
    plain_.emplace_back(trait);
  }
}

void RowFiller::start(InspectionRow& row) {
  row_ = &row;
  row.clear(rules_.traits.size());
}

void RowFiller::number(std::size_t trait, Sides sides, double value, std::string_view note) {
  for (const Side side : sides) {
    row_->numbers[number_place(trait, side)] = value;
  }
  if (!note.empty()) {
    keep(trait, sides, plain_[trait].value(value), note);
  }
}

void RowFiller::keep(std::size_t trait, Sides sides, const Value& value, std::string_view note) {
  for (const Side side : sides) {
    row_->inspection.observations.push_back({trait, side, value, std::string(note), {}});
  }
}

bool RowFiller::text(std::size_t trait, Sides sides, std::string_view text, const Beside& beside) {
  if (const auto value = plain_[trait].read(text, beside.confirmed)) {
    number(trait, sides, *value, beside.note);
    return true;
  }
  if (std::holds_alternative<ShoeSizeKind>(rules_.traits[trait].kind)) {
    const auto size = parse_shoe_size(text);
    if (size) {
      keep(trait, sides, *size, beside.note);
    }
    return static_cast<bool>(size);
  }
  if (std::holds_alternative<SockRangeKind>(rules_.traits[trait].kind)) {
    const auto range = parse_sock_range(text);
    if (range) {
      keep(trait, sides, *range, beside.note);
    }
    return static_cast<bool>(range);
  }
  return false;
}

bool RowFiller::repeats(std::size_t trait, Sides sides, std::span<const std::string_view> texts,
                        const Beside& beside) {
  if (!plain_[trait].is_measure()) {
    return false;
  }
  Readings readings;
  for (std::size_t i = 0; i < texts.size(); ++i) {
    const auto one = plain_[trait].reading(texts[i], i + 1 < texts.size(), beside.confirmed);
    if (!one) {
      return false;
    }
    readings.stored.push_back(*one);
  }
  number(trait, sides, mean(readings), beside.note);
  return true;
}

bool RowFiller::not_seen(std::size_t trait, Sides sides, std::string_view reason,
                         std::string_view note) {
  keep(trait, sides, NotSeen{std::string(reason)}, note);
  return true;
}

bool RowFiller::fibres(std::size_t trait, Sides sides, std::span<const NamedShare> parts,
                       std::string_view note) {
  const auto content = fibre_content(parts);
  if (content) {
    keep(trait, sides, *content, note);
  }
  return static_cast<bool>(content);
}

void RowFiller::finish() {
  auto& kept = row_->inspection.observations;
  if (kept.size() > 1) {
    std::sort(kept.begin(), kept.end(), [](const Observation& a, const Observation& b) {
      return std::pair(a.trait, a.side) < std::pair(b.trait, b.side);
    });
  }
}

}  // namespace heelrule
