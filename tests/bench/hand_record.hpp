// Part of the scorer that is written by hand (see hand_writer.hpp): what it knows of a record.
#pragma once

#include <cmath>
#include <limits>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/model/inspection_row.hpp"
#include "engine/quantity/unit.hpp"
#include "thirty_rules.hpp"

namespace thirty {

using Text = std::string_view;

constexpr double unseen = std::numeric_limits<double>::quiet_NaN();

struct Record {
  std::string date, observer, client, shoe;
  double values[2 * trait_count];                  // of a trait without sides the first of two
  std::vector<std::pair<int, std::string>> notes;  // by trait
};

// Takes what the reader of the engine has read.
inline void take(const heelrule::InspectionRow& row, Record& record) {
  using heelrule::Side;
  record.date = row.inspection.date;
  record.observer = row.inspection.observer;
  record.client = row.inspection.client;
  record.shoe = row.inspection.shoe_label;
  for (std::size_t trait = 0; trait < recorded_count; ++trait) {
    const bool has_sides = traits[trait].has_sides;
    const bool in_months = traits[trait].unit == "months";  // which the engine keeps as seconds
    const auto number = [&](Side side) {
      const double stored = row.numbers[heelrule::number_place(trait, side)];
      return in_months ? heelrule::in_unit(stored, heelrule::Unit::month) : stored;
    };
    record.values[2 * trait] = number(has_sides ? Side::left : Side::none);
    record.values[2 * trait + 1] = has_sides ? number(Side::right) : unseen;
  }
  record.notes.clear();
  for (const heelrule::Observation& seen : row.inspection.observations) {
    record.notes.emplace_back(static_cast<int>(seen.trait), seen.note);
  }
}

inline double settled(double value) { return std::nearbyint(value * 1e9) / 1e9; }

inline void derive(Record& record) {
  for (const DerivedFacts& facts : derived) {
    for (int side = 0; side < 2; ++side) {
      record.values[2 * facts.result + side] =
          settled(record.values[2 * facts.a + side] - record.values[2 * facts.b + side]);
    }
  }
}

}  // namespace thirty
