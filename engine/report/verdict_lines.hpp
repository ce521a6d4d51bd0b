// Verdicts as JSON Lines: one a line, thousands in a breath.
#pragma once

#include <memory>
#include <span>
#include <string>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/scoring/detail.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Writes verdicts of one program. A full line is `json_report` without doubt and without its
/// white space, to the byte. Shorter ones have some of its keys, in the same order, and mean the
/// same by them; but a finding that did not pass has `rule`, `status` and `words`, which are its
/// sentence, or what was read where it has none. Of the safety questions they keep those that were
/// answered with yes.
///
/// What is the same in every verdict is made once. What depends on a reading alone is made once for
/// each value and kept (see `Memo`): by the same functions that `json_report` calls, so there is
/// one place where each word comes from.
class VerdictLines {
 public:
  /// `languages` is the reader's choice, as for `account`. Verdicts must have been decided in
  /// `detail` or in full. `program` must outlive this object.
  VerdictLines(const Program& program, std::span<const std::string> languages, Detail detail);
  ~VerdictLines();
  VerdictLines(VerdictLines&&) noexcept;
  VerdictLines& operator=(VerdictLines&&) noexcept;
  VerdictLines(const VerdictLines&) = delete;
  VerdictLines& operator=(const VerdictLines&) = delete;

  /// Appends the verdict and a line feed.
  void append(const Inspection& inspection, const Verdict& verdict, GrowingText& lines);

 private:
  class Writer;
  std::unique_ptr<Writer> writer_;
};

}  // namespace heelrule
