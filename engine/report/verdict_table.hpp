// Verdicts as rows of a table.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/reading/line_fault.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Writes verdicts of one program as comma-separated values, a row each: who and when, the grade,
/// the score with what it can still become, referrals and cautions in words, the status of each
/// rule, and in the last column what is wrong with a record that could not be read.
class VerdictTable {
 public:
  /// `languages` is the reader's choice, as for `account`. `program` must outlive this object.
  VerdictTable(const Program& program, std::span<const std::string> languages);

  /// The names of the columns, and a line feed.
  std::string header() const;

  /// A row and a line feed.
  std::string row(const Inspection& inspection, const Verdict& verdict) const;
  std::string row(const LineFault& fault) const;

  /// Appends a row.
  void append(const Inspection& inspection, const Verdict& verdict, GrowingText& rows) const {
    rows.put(row(inspection, verdict));
  }

 private:
  std::string said(const Verdict& verdict, const std::vector<Spoken>& all,
                   Phrase SpokenWords::* which) const;
  std::string safety_referrals(const Verdict& verdict) const;

  const Program& program_;
  std::vector<std::string> languages_;
};

}  // namespace heelrule
