// A blank sheet as a file to fill in.
#pragma once

#include <span>
#include <string>

#include "engine/scoring/program.hpp"

namespace heelrule {

/// A whole record in YAML in which every value is `not seen`, with each question, its unit and
/// range, its levels and how to take it as comments, in bench order. It reads as it is: a line that
/// nobody fills in stays not seen.
std::string blank_yaml(const Program& program, std::span<const std::string> languages);

}  // namespace heelrule
