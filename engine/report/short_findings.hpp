// What did not pass, as JSON without white space, from words that are made once and kept.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "engine/model/inspection_row.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/report/kept_sentences.hpp"
#include "engine/report/kept_words.hpp"
#include "engine/scoring/block.hpp"

namespace heelrule {

/// Writes the findings of one program that did not pass in full, each with the name of its rule,
/// its status and words: its sentence, or what was read where it has none. A finding is decided
/// when its case is met first.
class ShortFindings {
 public:
  /// `languages` is what `fallback_order` gives. Both must outlive this object.
  ShortFindings(const Program& program, std::span<const std::string> languages);

  /// Turns to the rows of an evaluated block, of which `rows` are the first.
  void turn_to(const Block& block, std::span<const InspectionRow> rows);

  /// Appends the findings of one of them, without the brackets around them.
  void append(std::size_t row, GrowingText& line) const { kept_.append(row, line); }

 private:
  std::uint32_t what_is_open(std::size_t contribution, const Block& block, std::size_t row) const;
  std::string words(std::size_t contribution, const Block& block, std::size_t row,
                    const Inspection& inspection);
  const std::string& head(std::size_t contribution, Status status);

  const Program& program_;
  // Of each contribution; what stands before the words, by status.
  std::vector<std::vector<Register>> needs_;
  std::vector<std::array<std::string, 4>> heads_;
  KeptSentences sentences_;
  KeptWords kept_;
  Finding finding_;
  GrowingText sentence_;
};

}  // namespace heelrule
