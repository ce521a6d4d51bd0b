// A record from its file; or what is wrong with it, already printed.
#pragma once

#include <optional>
#include <string>

#include "cli/exit_status.hpp"
#include "engine/model/inspection.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/reading/tree.hpp"

namespace heelrule {

/// Reads a record against a rule set. Where that fails, `status` becomes worse.
std::optional<Inspection> load_record(const std::string& path, const RuleSet& rules,
                                      ExitStatus& status);

/// The same record as it is written.
std::optional<Node> load_record_tree(const std::string& path, const RuleSet& rules,
                                     ExitStatus& status);

}  // namespace heelrule
