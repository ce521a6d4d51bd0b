// From the columns of an evaluated block to the verdict of one row, reasons and all.
#pragma once

#include "engine/model/verdict.hpp"
#include "engine/scoring/block.hpp"

namespace heelrule {

/// Reads the verdict of a row from an evaluated block. Nothing is judged again: credit, sums and
/// caps are those of the run; what is added are the reasons (which band, how far from the next,
/// what was missing) and the order of what is said.
Verdict decide(const Program& program, const Block& block, std::size_t row);

/// The same, into a verdict of another row, whose memory is used again.
void decide(const Program& program, const Block& block, std::size_t row, Verdict& verdict);

/// The score, the grade and the answers to the safety questions alone. Lists of other things stay
/// as they are.
void decide_briefly(const Program& program, const Block& block, std::size_t row, Verdict& verdict);

}  // namespace heelrule
