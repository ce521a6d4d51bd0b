// A measure of a record by the name of its trait, as the findings print it.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/report/report_subject.hpp"

namespace heelrule {

struct NamedMeasure {
  double value = 0;   ///< mm, or degrees
  std::string words;  ///< `246.3 mm`
};

/// The mean of what was recorded of a trait on a side, or what a rule worked out there; nothing
/// where the rule set has no such trait, it is no length or angle, or nothing was seen. The words
/// are those that the findings have.
std::optional<NamedMeasure> named_measure(const ReportSubject& subject, std::string_view trait,
                                          Side side);

}  // namespace heelrule
