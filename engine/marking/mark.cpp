#include "engine/marking/mark.hpp"

#include <algorithm>

#include "engine/quantity/settle.hpp"
#include "engine/scoring/grade.hpp"

namespace heelrule {
namespace {

std::optional<double> points_of(const std::vector<Comparison>& comparisons) {
  double earned = 0;
  double weight = 0;
  for (const Comparison& one : comparisons) {
    earned += one.weight * one.credit;
    weight += one.weight;
  }
  return weight > 0 ? std::optional(settled(100 * earned / weight)) : std::nullopt;
}

std::size_t mark_of(const MarkingRules& marking, double points) {
  std::size_t at = 0;
  while (at + 1 < marking.marks.size() && points < marking.marks[at].from) {
    ++at;
  }
  return at;
}

}  // namespace

std::size_t Mark::count(Likeness likeness) const {
  return static_cast<std::size_t>(
      std::count_if(comparisons.begin(), comparisons.end(),
                    [&](const Comparison& one) { return one.likeness == likeness; }));
}

Mark mark_record(const Program& program, const MarkingRules& marking, const Reference& reference,
                 const Inspection& record) {
  Mark mark;
  mark.verdict = grade(program, record);
  mark.comparisons = compare(program, marking, reference, record);
  mark.critical = critical_faults(program, marking, reference, mark.verdict, mark.comparisons);
  mark.attribution = attribute(program, reference.inspection, record);
  mark.points = points_of(mark.comparisons);
  if (mark.points) {
    mark.uncapped = mark_of(marking, *mark.points);
    mark.mark = mark.uncapped;
    for (const CriticalFault& fault : mark.critical.faults) {
      mark.mark = std::max(*mark.mark, fault.cap.value_or(0));
    }
  }
  return mark;
}

}  // namespace heelrule
