// From the name of a rule set to all of it, with every file that it builds on.
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "engine/model/rule_set.hpp"
#include "engine/quantity/parsed.hpp"
#include "engine/reading/tree.hpp"
#include "engine/source/diagnostic.hpp"
#include "engine/source/sources.hpp"

namespace heelrule {

/// A rule file that was found.
struct FoundFile {
  std::string name;      ///< as messages print it
  std::string identity;  ///< the same for the same file, whatever it was asked for as
  std::string text;
};

/// Looks up the rule set that `name` stands for in a file of which the identity is `from` (empty:
/// asked for by a person). It alone decides which folders are allowed, and says why a file is not
/// to be had.
using FindFile = std::function<Parsed<FoundFile>(std::string_view name, std::string_view from)>;

/// What became of a rule set. Where `complete` is false a file of it could not be read at all, and
/// cross-checking the rest would only report what that file might have held.
struct LoadedRules {
  RuleSet rules;
  Node tree;  ///< what `rules` was read from: all files joined
  Diagnostics diagnostics;
  bool complete = false;
  Problem not_found;  ///< empty unless the first file itself was not to be had
};

/// Reads a rule set and all that it extends, each file once; joins them; and reads the result.
/// Texts are added to `sources`. Reported: all faults of every file; extended rule sets that run in
/// a circle, with every name of it; two that disagree, with both places; a dropped name that is not
/// there; another version of the language; more than 32 files deep or 1000 in all. Where a file
/// could not be read, keys that it may have held are not missed. A rule set that cannot be found at
/// all is reported without a place, in `not_found`.
LoadedRules load_rules(std::string_view name, const FindFile& find, Sources& sources);

}  // namespace heelrule
