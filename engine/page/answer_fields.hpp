// A recorded value taken apart, as the fields of a page hold it.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "engine/model/rule_set.hpp"
#include "engine/reading/tree.hpp"

namespace heelrule {

/// One answer, every part of it as it was written.
struct AnswerFields {
  std::string name;        ///< of the trait
  Side side = Side::none;  ///< none: the trait has no sides, or one value was given for both
  std::vector<std::string> texts;  ///< the value, or its repeats: `246`, `247 mm`
  std::vector<std::pair<std::string, std::string>> fibres;  ///< `cotton`, `80 %`
  bool not_seen = false;
  std::string reason;  ///< why not
  std::string note;
  bool confirmed = false;
  std::string doubt;  ///< `2 mm`; empty where the record states none

  bool operator==(const AnswerFields&) const = default;
};

/// The answers of a record, in the order written; a value that was given once for both sides comes
/// once. Precondition: `read_inspection` found no fault in the record.
std::vector<AnswerFields> answer_fields(const Node& record, const RuleSet& rules);

}  // namespace heelrule
