// Words that are spoken about findings, as JSON without white space, made once and kept.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "engine/model/verdict.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/report/kept_sentences.hpp"
#include "engine/report/memo.hpp"
#include "engine/report/numerals.hpp"
#include "engine/report/padded_text.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Which words of a rule or band.
enum class SpokenKind : std::uint8_t { referral, caution, advice };

/// Writes lists of referrals, cautions and advice of one program, as `json_report` does.
class SaidLines {
 public:
  /// `languages` is what `fallback_order` gives. Both must outlive this object.
  SaidLines(const Program& program, std::span<const std::string> languages);

  /// Appends `all`, which `verdict` says, without the brackets around them.
  void append(const Verdict& verdict, const std::vector<Spoken>& all, SpokenKind kind,
              GrowingText& line);

 private:
  // Words of one kind about one contribution, up to the gain.
  struct Kept {
    PaddedText of_rule;  // where there is no number in them, as in most; else empty
    std::array<std::array<Memo, speakers>, 2> by_value;  // the rule's words, and a band's
  };

  std::string entry(const Finding& finding, const Phrase& phrase, const SideReading& reading) const;
  const PaddedText& kept_entry(const Spoken& spoken, const Finding& finding, SpokenKind kind);

  const Program& program_;
  std::span<const std::string> languages_;
  std::vector<std::array<Kept, 3>> kept_;
  Numerals gains_;
};

}  // namespace heelrule
