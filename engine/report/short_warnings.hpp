// What a practitioner must see, as JSON without white space, from words that are made once and
// kept.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "engine/model/verdict.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/report/kept_words.hpp"
#include "engine/scoring/block.hpp"

namespace heelrule {

/// Writes the referrals of one program, or its cautions, each with the name of its rule. Which they
/// are is decided when a case is met first.
class ShortWarnings {
 public:
  /// `languages` is what `fallback_order` gives. Both must outlive this object. `which` says
  /// whether it is referrals or cautions.
  ShortWarnings(const Program& program, std::span<const std::string> languages,
                Phrase SpokenWords::* which);

  /// Turns to the first `count` rows of an evaluated block.
  void turn_to(const Block& block, std::size_t count);

  /// Whether one of them has any.
  bool has(std::size_t row) const { return kept_.has(row); }

  /// Appends those of one of them, without the brackets around them.
  void append(std::size_t row, GrowingText& line) const { kept_.append(row, line); }

 private:
  // A contribution that may warn.
  struct Warner {
    std::size_t contribution = 0;
    bool by_band = false;  // one of its bands has words
    bool alike = false;    // none has, and its rule's say the same of every reading
  };

  std::string words(std::size_t contribution, const Block& block, std::size_t row);

  const Program& program_;
  std::span<const std::string> languages_;
  Phrase SpokenWords::* which_;
  std::vector<Warner> warners_;
  KeptWords kept_;
  Finding finding_;
};

}  // namespace heelrule
