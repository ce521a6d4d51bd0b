// Measures given on the command line, made into the record that they would have been.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// An option of `size` that takes a measure, and the trait that it is a reading of.
struct MeasureOption {
  std::string_view name;  ///< without its dashes
  std::string_view trait;
  Side side = Side::none;
};

std::span<const MeasureOption> measure_options();

/// What was given for one of them; more than one where it was measured repeatedly.
struct GivenMeasure {
  std::string option;
  std::vector<std::string> readings;
};

/// The record of these measures. A problem names the option: a reading that cannot be read, has the
/// wrong unit or is not plausible, or one that the rule set does not ask for. Whether a
/// practitioner has seen the pair, which a rule set for feet at risk asks, is answered with yes,
/// not yet: there is no pair.
Parsed<Inspection> inspection_of(std::span<const GivenMeasure> given, std::string_view date,
                                 const RuleSet& rules);

}  // namespace heelrule
