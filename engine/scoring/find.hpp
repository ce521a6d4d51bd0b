// What one contribution came to in one row, with its reasons.
#pragma once

#include <cstddef>
#include <vector>

#include "engine/model/verdict.hpp"
#include "engine/scoring/block.hpp"

namespace heelrule {

/// Reads the finding of a contribution from an evaluated block: which band each side lies in, which
/// side decides, what was missing. Its gain and cap, which are for the whole verdict to say, are
/// none. `found` may be that of another row, whose memory is used again.
void find(const Program& program, const Block& block, std::size_t row, std::size_t contribution,
          Finding& found);

/// Adds what a finding warns of, `which` being cautions or referrals: a band's words where a value
/// lies in it, its rule's where it cannot pass in full. Those of either side count, whichever
/// decides, and also where the other was not seen.
void warn(const Program& program, std::size_t contribution, const Finding& found,
          Phrase SpokenWords::* which, std::vector<Spoken>& warnings);

/// Whether a finding has words of its own: it applies, and a side was seen.
bool has_words(const Finding& found);

}  // namespace heelrule
