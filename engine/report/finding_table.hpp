// Findings as rows of a table, for a spreadsheet.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// The names of the columns, and a line feed.
///
///     client observer date shoe marked   who and what, as recorded
///     grade points                       of the whole record, on each row
///     kind                               `finding`, `safety`, `caution`, `referral` or `advice`
///     section rule title                 what the row is about; of `safety`, the question
///     status                             pass, part, fail, not seen, does not apply; yes, no, not
///     answered left right value                   what was read, with its unit weight earned gain
///     numbers; empty where there are none must                               yes or no words
///     because source               the finding in a sentence, its reason and its source
std::string finding_table_header();

/// A row for each safety question, finding, referral, caution and piece of advice of a record; what
/// waits for a practitioner has none. Every text is safe to open in a spreadsheet (see
/// `append_csv_cell`).
std::string finding_table(const Program& program, const Inspection& inspection,
                          const Verdict& verdict, std::span<const std::string> languages);

}  // namespace heelrule
