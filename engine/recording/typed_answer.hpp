// An answer as a person types it on one line.
#pragma once

#include <string_view>

#include "engine/model/trait.hpp"
#include "engine/quantity/parsed.hpp"
#include "engine/reading/tree.hpp"

namespace heelrule {

/// Reads an answer to one trait, of one side, as a piece of a record; what a record may not hold is
/// refused in the words in which a file would be.
///
///     243 mm               a value, as in a file; levels, yes and no may be cut short
///     246, 247, 246 mm     repeats (also with `;`)
///     131 mm !             outside the plausible range, and true
///     131 mm ± 2 mm        with its own doubt (also `+-`)
///     firm # creased       with a note
Parsed<Node> typed_answer(const Trait& trait, std::string_view line);

/// Not seen, and why; the reason may be empty. Refused: what no file may hold.
Parsed<Node> not_seen_answer(std::string_view reason);

/// Free words, as the head of a record has them; they may be empty. Refused: what no file may hold.
Parsed<Node> typed_words(std::string_view line);

}  // namespace heelrule
