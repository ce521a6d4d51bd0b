#include "engine/model/inspection_row.hpp"

#include <limits>
#include <utility>

namespace heelrule {

void InspectionRow::clear(std::size_t traits) {
  for (std::string* text :
       {&inspection.rules, &inspection.date, &inspection.observer, &inspection.client,
        &inspection.shoe_label, &inspection.shoe_marked, &inspection.note}) {
    text->clear();
  }
  inspection.observations.clear();
  numbers.assign(traits * 3, std::numeric_limits<double>::quiet_NaN());
}

void fill(InspectionRow& row, Inspection inspection, std::size_t traits) {
  row.clear(traits);
  row.inspection = std::move(inspection);
  for (const Observation& seen : row.inspection.observations) {
    row.numbers[number_place(seen.trait, seen.side)] = plain_number(seen.value);
  }
}

}  // namespace heelrule
