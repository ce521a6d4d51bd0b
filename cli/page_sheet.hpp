// The recording sheet as one HTML page.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cli/load_program.hpp"

namespace heelrule {

/// Whether this program was built with the engine for pages; what to do where it was not.
Problem page_engine_missing();

struct PageOptions {
  bool blind = false;  ///< shows referrals, and nothing else of what answers come to
  std::vector<std::string> languages;  ///< first choice first; none: those of the reader's browser
  std::optional<Node> record;          ///< what it begins with, a sound record of these rules
};

/// A page that asks everything the rule set asks, checks answers as they are typed, and shows what
/// they come to. It holds the rules and the engine, and asks for nothing from anywhere.
/// Preconditions: the rules compiled, and nothing is missing.
std::string page_sheet(const CompiledRules& rules, const PageOptions& options);

}  // namespace heelrule
