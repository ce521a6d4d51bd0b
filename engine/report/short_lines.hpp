// Verdicts as short JSON Lines: what is brief, and what failed.
#pragma once

#include <memory>
#include <span>
#include <string>

#include "engine/model/inspection_row.hpp"
#include "engine/report/detail.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/scoring/block.hpp"

namespace heelrule {

/// Writes verdicts of one program as lines that have some of the keys of a full one (see
/// `VerdictLines`), in the same order, and mean the same by them; but a finding that did not pass
/// has `rule`, `side` where each counts by itself, `status` and `words`, which are its sentence, or
/// what was read where it has none. Of the safety questions they keep those that were answered with
/// yes.
///
/// A finding is told of in the words that its case had before, without being decided again; so this
/// reads the columns of an evaluated block, where a full line asks for a verdict.
class ShortLines {
 public:
  /// `languages` is the reader's choice, as for `account`. `detail` is one of the shorter ones.
  /// `program` must outlive this object.
  ShortLines(const Program& program, std::span<const std::string> languages, Detail detail);
  ~ShortLines();
  ShortLines(ShortLines&&) noexcept;
  ShortLines& operator=(ShortLines&&) noexcept;
  ShortLines(const ShortLines&) = delete;
  ShortLines& operator=(const ShortLines&) = delete;

  /// Turns to the rows of an evaluated block, of which `rows` are the first. Both must stay as they
  /// are until the last of their lines is written.
  void turn_to(const Block& block, std::span<const InspectionRow> rows);

  /// Appends the verdict of one of them and a line feed.
  void append(std::size_t row, GrowingText& lines);

 private:
  class Writer;
  std::unique_ptr<Writer> writer_;
};

}  // namespace heelrule
