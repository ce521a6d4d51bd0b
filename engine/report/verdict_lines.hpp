// Verdicts as JSON Lines, one a line, with all there is to say.
#pragma once

#include <memory>
#include <span>
#include <string>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Writes verdicts of one program, each as `json_report` does without doubt, to the byte but for
/// its white space.
///
/// What is the same in every verdict is made once. What depends on a reading alone is made once for
/// each value and kept (see `Memo`): by the same functions that `json_report` calls, so there is
/// one place where each word comes from.
class VerdictLines {
 public:
  /// `languages` is the reader's choice, as for `account`. `program` must outlive this object.
  VerdictLines(const Program& program, std::span<const std::string> languages);
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
