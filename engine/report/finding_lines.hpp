// Findings as JSON without white space, from words that are made once and kept.
#pragma once

#include <array>
#include <span>
#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/report/kept_sentences.hpp"
#include "engine/report/memo.hpp"
#include "engine/report/numerals.hpp"
#include "engine/report/padded_text.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Writes findings of one program, as `json_report` does.
class FindingLines {
 public:
  /// `languages` is what `fallback_order` gives. Both must outlive this object.
  FindingLines(const Program& program, std::span<const std::string> languages);

  /// Appends the findings of `verdict`, without the brackets around them.
  void append(const Inspection& inspection, const Verdict& verdict, GrowingText& line);

 private:
  // What is kept of one contribution.
  struct Kept {
    Memo heads;                       // by credit
    std::array<PaddedText, 2> musts;  // without and with a cap, to the readings
    std::array<Memo, 3> readings;     // by side and value
    PaddedText reasons;               // from the end of the sentence to the notes
  };

  void append(std::size_t index, const Finding& finding, GrowingText& line);
  void append_readings(Kept& kept, const Finding& finding, GrowingText& line);
  void append_missing(const Finding& finding, GrowingText& line) const;
  void append_notes(const Inspection& inspection, const Finding& finding, GrowingText& line) const;

  const Program& program_;
  std::span<const std::string> languages_;
  std::vector<Kept> kept_;
  std::vector<PaddedText> missing_;  // of each trait and side
  KeptSentences sentences_;
  Numerals gains_;
};

}  // namespace heelrule
