// Whose words are spoken about a finding, and of which reading.
#pragma once

#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// The reading that the words speak of: the one whose band has them, or the one that decides.
inline const SideReading& reading_of(const Spoken& spoken, const Finding& finding) {
  return finding.readings[spoken.reading.value_or(finding.decisive)];
}

/// Where the words stand: with the band of that reading, or with the rule as a whole.
inline const SpokenWords& words_of(const Spoken& spoken, const Finding& finding,
                                   const Program& program) {
  const RuleProgram& rule = program.rule_programs[finding.rule];
  return spoken.reading ? rule.band_words[reading_of(spoken, finding).band] : rule.words;
}

}  // namespace heelrule
