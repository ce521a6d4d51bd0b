// What a trait is worth in a verdict.
#pragma once

#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// By trait: how many points the score of `inspection` can move by what is recorded of that trait
/// alone, both of its sides together. It is the largest of three distances from the score:
///
///  - to the score if the trait were not seen, as the program works it out;
///  - to the score if every rule that needs the trait applied and failed;
///  - to the score if every such rule applied and passed in full.
///
/// 0 for a trait that no rule needs. A score of which nothing was seen counts as 0 points.
std::vector<double> trait_worths(const Program& program, const Inspection& inspection,
                                 const Verdict& verdict);

}  // namespace heelrule
