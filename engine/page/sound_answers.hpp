// Of a record that is still being written: what can be graded already, and what is wrong with the
// rest.
#pragma once

#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/reading/tree.hpp"

namespace heelrule {

/// Why an answer cannot be taken.
struct AnswerFault {
  std::string name;  ///< the trait, or the key of the record's head: `date`
  Side side = Side::none;
  std::string message;  ///< in the words of `read_inspection`
  std::string hint;
  bool is_unusual = false;  ///< it would be taken if it were confirmed

  bool operator==(const AnswerFault&) const = default;
};

struct SoundAnswers {
  Inspection inspection;  ///< of the answers without a fault
  std::vector<AnswerFault> faults;
};

/// Reads a record answer by answer, so that a slip in one leaves the others to be graded. A record
/// without a fault gives what `read_inspection` gives. The tree is a map with `inspection`,
/// `safety` and `found`; other keys are left to `read_inspection`.
SoundAnswers sound_answers(const Node& record, const RuleSet& rules);

}  // namespace heelrule
