#include "engine/report/agreement_forest.hpp"

#include <algorithm>
#include <utility>

#include "engine/report/agreement_words.hpp"

namespace heelrule {

IntervalRow forest_row(std::string name, const Estimate& estimate) {
  return {std::move(name),        estimate.value,           estimate.interval.low,
          estimate.interval.high, estimate_words(estimate), false};
}

IntervalRows agreement_forest(std::string title, std::vector<IntervalRow> rows) {
  const bool below =
      std::any_of(rows.begin(), rows.end(), [](const IntervalRow& row) { return row.value < 0; });
  return {"forest",
          std::move(title),
          below ? -0.5 : 0,
          1,
          below ? std::vector<double>{-0.5, 0, 0.5, 1} : std::vector<double>{0, 0.25, 0.5, 0.75, 1},
          std::move(rows)};
}

}  // namespace heelrule
