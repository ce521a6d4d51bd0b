// The parts of a verdict's line that full and short ones have alike.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/detail.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/report/memo.hpp"
#include "engine/report/numerals.hpp"
#include "engine/report/padded_text.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Writes parts of the lines of one program, each as `json_report` has it but for white space.
class LineParts {
 public:
  /// `languages` is what `fallback_order` gives. Both must outlive this object.
  LineParts(const Program& program, std::span<const std::string> languages);

  /// What this is and by which rules, up to what is said of the inspection.
  void open(GrowingText& line) const { line.put(opening_); }

  /// From the date to what the shoe is marked with.
  static void who_and_when(const Inspection& inspection, GrowingText& line);

  /// The answers to safety questions, without the brackets around them; unless in full, those alone
  /// that are yes.
  void safety(const Inspection& inspection, const Verdict& verdict, Detail detail,
              GrowingText& line);

  /// Says that the points of a score will soon be asked for.
  void expect(const Score& score) const;

  /// A score, up to its weights.
  void points(const Score& score, GrowingText& line);

  void number(double number, GrowingText& line) { line.put(numerals_.of(number)); }

 private:
  // The words of one answer. They hold until the next call.
  std::string_view answer(const Inspection& inspection, const Verdict& verdict, std::size_t which);

  const Program& program_;
  std::span<const std::string> languages_;
  PaddedText opening_;
  std::vector<Memo> answers_;
  std::string answer_with_words_;
  Numerals numerals_;
};

}  // namespace heelrule
