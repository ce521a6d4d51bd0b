// House rules as a page carries them.
#pragma once

#include <string>
#include <string_view>

#include "engine/quantity/parsed.hpp"
#include "engine/reading/tree.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// A rule set as one line of JSON: `{"name":"everyday","rules":{…}}`. `name` is that by which it
/// was asked for, `tree` all its files joined, as `load_rules` gives them.
std::string page_rules(std::string_view name, const Node& tree);

/// The program of such a line. A problem where the line is none, or where its rule set is unsound;
/// none that was written from a program that compiled is.
Parsed<Program> program_of_page(std::string_view line);

}  // namespace heelrule
