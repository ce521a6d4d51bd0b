// From the columns of an evaluated block to the verdict of one row, reasons and all.
#pragma once

#include "engine/model/verdict.hpp"
#include "engine/scoring/block.hpp"
#include "engine/scoring/detail.hpp"

namespace heelrule {

/// Reads the verdict of a row from an evaluated block. Nothing is judged again: credit, sums and
/// caps are those of the run; what is added are the reasons (which band, how far from the next,
/// what was missing) and the order of what is said.
Verdict decide(const Program& program, const Block& block, std::size_t row);

/// The same as far as `detail` goes, into a verdict of another row, whose memory is used again.
/// Only a full verdict has gains, caps, sections, advice, and what would settle the grade. Of the
/// others, only the findings are decided that `lacking`, `referrals` or `cautions` name.
void decide(const Program& program, const Block& block, std::size_t row, Detail detail,
            Verdict& verdict);

}  // namespace heelrule
