// Cells of a table of comma-separated values (RFC 4180).
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace heelrule {

/// Appends a text as a cell: in quotes where it needs them. A text that a spreadsheet would take
/// for a formula (it begins with `=`, `+`, `-`, `@` or their full-width forms, perhaps after blanks
/// or quotes) gets an apostrophe in front (CWE-1236), which `split_csv_row` takes off again.
/// Control characters become blanks: one row is one line.
void append_csv_cell(std::string& row, std::string_view text);

/// A cell of a row that was read.
struct CsvCell {
  std::string text;       ///< without quotes, and without the apostrophe before a formula
  std::size_t begin = 0;  ///< of the cell as it stands, in bytes
  std::size_t end = 0;
};

struct CsvRow {
  std::vector<CsvCell> cells;
  std::string_view fault;  ///< what is wrong at the last cell; empty where nothing is
};

/// Cuts a row into cells. Where the row is no RFC 4180, a cell at the place of the fault stands at
/// the end, and `fault` says what is wrong.
///
///     split_csv_row("S-07,\"firm, new\"")  ->  `S-07`, `firm, new`
CsvRow split_csv_row(std::string_view row);

}  // namespace heelrule
