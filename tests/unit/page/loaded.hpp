// A rule set as the command loads it: its joined tree, and the program of that.
#pragma once

#include <string>

#include "engine/page/page_engine.hpp"
#include "engine/reading/tree.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

struct LoadedProgram {
  Node tree;
  Program program;
};

/// The rule set of a text. The running test fails unless it compiles.
LoadedProgram loaded_program(const std::string& rules);

/// A rule set that ships, with all that it extends.
LoadedProgram loaded_shipped(const std::string& name);

/// The engine of the page of a rule set.
PageEngine page_engine(const LoadedProgram& loaded);

/// A record in YAML as a tree; the running test fails unless it can be read.
Node tree_of(const std::string& yaml);

/// Feet and insoles of two sides, a level, an answer and fibres; safety first.
std::string small_rules();

}  // namespace heelrule
