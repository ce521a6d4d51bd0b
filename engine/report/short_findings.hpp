// What did not pass, as JSON without white space, from words that are made once and kept.
#pragma once

#include <array>
#include <span>
#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/report/kept_sentences.hpp"
#include "engine/report/padded_text.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Writes the findings of one program that did not pass in full, each with the name of its rule,
/// its status and words: its sentence, or what was read where it has none.
class ShortFindings {
 public:
  /// `languages` is what `fallback_order` gives. Both must outlive this object.
  ShortFindings(const Program& program, std::span<const std::string> languages);

  /// Appends the findings of `verdict`, without the brackets around them.
  void append(const Inspection& inspection, const Verdict& verdict, GrowingText& line);

 private:
  std::vector<std::array<PaddedText, 3>> heads_;  // up to the words
  KeptSentences words_;
};

}  // namespace heelrule
