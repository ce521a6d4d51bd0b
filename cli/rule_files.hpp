// Where rule sets are found, and in which folders they may be.
#pragma once

#include <string>

#include "engine/reading/load_rules.hpp"

namespace heelrule {

/// Finds rule files for `load_rules`. A person names a file by its path, or a rule set that ships
/// by its name. A rule set names another by a plain name, or a path below its own folder: it is
/// looked up in the folder of the file that names it, then among the sets that ship. What resolves
/// to anywhere else is refused, links included.
class RuleFiles {
 public:
  /// `shipped` is the folder of the rule sets that ship.
  explicit RuleFiles(std::string shipped);

  Parsed<FoundFile> find(std::string_view name, std::string_view from) const;

 private:
  Parsed<FoundFile> find_for_person(std::string_view name) const;
  Parsed<FoundFile> find_for_file(std::string_view name, std::string_view from) const;
  Problem no_rule_set(std::string_view name, std::string_view hint) const;
  bool allowed(const std::string& real, const std::string& folder) const;

  std::string shipped_;
  std::string shipped_real_;
};

/// The folder of the rule sets that ship: beside the installed command, else that of the source
/// tree.
std::string shipped_rules_folder();

}  // namespace heelrule
