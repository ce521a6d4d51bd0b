// Words with placeholders, cut into pieces once so that printing them is joining.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/text.hpp"
#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// What a placeholder stands for.
enum class Slot : std::uint8_t { none, value, side, limit, short_by, over_by, band };

/// A stretch of fixed words, or a slot.
struct Piece {
  Slot slot = Slot::none;
  std::string words;  ///< of `none`

  bool operator==(const Piece&) const = default;
};

/// One wording of a phrase.
struct PhraseWording {
  std::string language;
  std::vector<Piece> pieces;

  bool operator==(const PhraseWording&) const = default;
};

/// A Text whose placeholders are known. Its wordings are those of the text, in the same order.
struct Phrase {
  std::vector<PhraseWording> wordings;

  bool empty() const { return wordings.empty(); }

  /// Whether no wording has a slot, so that it says the same of every reading.
  bool is_fixed() const;

  bool operator==(const Phrase&) const = default;
};

/// The wording whose language comes first in `languages`, as `Text::choose` finds it. Precondition:
/// not empty.
const PhraseWording& choose(const Phrase& phrase, std::span<const std::string> languages);

/// Which slots can be filled where a text stands.
struct SlotsAllowed {
  bool side = false;          ///< the trait has sides
  bool limit = false;         ///< a neighbouring band earns more
  bool short_by = false;      ///< … and lies above
  bool over_by = false;       ///< … and lies below
  std::string_view no_limit;  ///< why there is none, where the words are not those of a band
};

/// Finds the placeholders of a text. Reported: an unknown one, one that cannot be filled here, a
/// brace that is not closed.
Phrase read_phrase(const Text& text, const SlotsAllowed& allowed, Diagnostics& diagnostics);

}  // namespace heelrule
