// Inspections as comma-separated values (RFC 4180): one a row, one row a line.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/inspection_row.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/reading/line_fault.hpp"
#include "engine/reading/row_filler.hpp"
#include "engine/reading/tree.hpp"
#include "engine/source/checked.hpp"

namespace heelrule {

/// Which part of a record a column holds. The name of a column is made of keys of the record:
///
///     client, date, observer, note, rules   of the inspection
///     shoe, marked                          its shoe's label and marked size
///     foot_length                           a trait; one with sides: the same on both
///     foot_length.left                      its left side
///     foot_length.left.note                 what was noted beside it
///     foot_length.left.confirmed            `yes` where an unusual reading is true
///     found.note                            a trait that has one of the other names
struct CsvColumn {
  enum class Part : std::uint8_t { head, shoe, value, note, confirmed };

  std::string name;
  Part part = Part::head;
  std::string key;                           ///< of `head` and `shoe`: of the record
  std::string Inspection::* text = nullptr;  ///< of `head` and `shoe`: where it goes
  std::size_t trait = 0;                     ///< of all others
  Side side = Side::none;  ///< none: the trait has no sides, or the cell goes for both
};

/// Reads the header of a table. Reported: a column of another name, with the nearest known one; a
/// column that comes twice; a trait both by its sides and without.
Checked<std::vector<CsvColumn>> read_csv_header(const Sources& sources, std::uint32_t source,
                                                const RuleSet& rules);

/// Reads rows of a table one by one. An empty cell is nothing at all. Repeats of a measure stand in
/// one cell, as in `246; 247; 246 mm`, and so do the fibres of a blend: `cotton 80 %; elastane 20
/// %`. A row is made into the record that it stands for and read as one, so that it means the same,
/// and its faults are told in the same words; only a row of plain values goes a shorter way.
class CsvLineReader {
 public:
  /// `name` is what messages call the file. `rules` must outlive this object.
  CsvLineReader(const RuleSet& rules, std::vector<CsvColumn> columns, std::string name);

  /// Reads a line (without its line break) into `row`, or tells what is wrong with it. `number` is
  /// the line's number in its file; `JsonScanner::padding` bytes must be readable behind the line.
  std::optional<LineFault> read(std::string_view line, std::uint64_t number, InspectionRow& row);

 private:
  bool read_plain(std::string_view line, InspectionRow& row);
  bool put_plain(const CsvColumn& column, std::string_view cell, Inspection& head);

  const RuleSet* rules_;
  std::vector<CsvColumn> columns_;
  std::string name_;
  RowFiller filler_;
};

}  // namespace heelrule
