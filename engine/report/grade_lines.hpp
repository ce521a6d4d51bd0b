// Records in, verdicts out, many at a time.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "engine/model/inspection_row.hpp"
#include "engine/reading/csv_lines.hpp"
#include "engine/reading/json_lines.hpp"
#include "engine/report/detail.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/report/short_lines.hpp"
#include "engine/report/verdict_lines.hpp"
#include "engine/report/verdict_table.hpp"
#include "engine/scoring/block.hpp"

namespace heelrule {

/// A piece of an input: whole lines, the last of which may lack its line feed only at the end of
/// the input.
struct Lines {
  std::string_view text;         ///< with `JsonLineReader::padding` readable bytes behind it
  std::uint64_t first_line = 1;  ///< the number that its first line has in the input
};

/// What became of a piece. Filled again and again, so that a long run asks for no new memory.
struct GradedLines {
  GrowingText text;                     ///< one line for each line of the input
  std::vector<std::string> complaints;  ///< for people: the first faults, with their places
  std::uint64_t bytes = 0;              ///< of the input
  std::uint64_t lines = 0;              ///< how many lines were read
  std::uint64_t faulty = 0;             ///< how many of them could not be
  bool is_cut_short = false;  ///< it ends with a faulty line, because the run was to stop there
  bool falls_short = false;   ///< a grade does not reach, or may not reach, the one asked for
};

/// How to grade lines.
struct GradingOrder {
  bool stop_at_fault = false;
  std::optional<std::size_t> at_least;  ///< a grade of the rule set
  std::size_t most_complaints = 20;     ///< in words, for each piece
};

/// Grades pieces of an input, one after the other. Which piece comes when, and what came before it,
/// does not matter: the same line gives the same bytes.
class LineGrader {
 public:
  using Reader = std::variant<JsonLineReader, CsvLineReader>;
  using Writer = std::variant<VerdictLines, ShortLines, VerdictTable>;

  /// `program` must outlive this object.
  LineGrader(const Program& program, Reader reader, Writer writer, const GradingOrder& order);

  /// Grades every line of a piece. What `graded` held before is forgotten.
  void grade(const Lines& lines, GradedLines& graded);

 private:
  // Cuts lines off, a block of them at most; says how many.
  std::size_t cut(std::string_view& rest);

  // Reads what was cut off, up to a fault at which the run stops; says how many lines it read.
  std::size_t read(std::size_t count, std::uint64_t first_line);
  template <class OneReader>
  std::size_t read_with(OneReader& reader, std::size_t count, std::uint64_t first_line);

  void write(std::size_t count, GradedLines& graded);
  void write_verdict(std::size_t row, GrowingText& text);
  void write_fault(const LineFault& fault, GradedLines& graded);
  bool falls_short(std::size_t row) const;

  const Program& program_;
  Reader reader_;
  Writer writer_;
  GradingOrder order_;
  Block block_;
  // Of each row of the block: its line, what was read, and what was wrong.
  std::vector<std::string_view> lines_;
  std::vector<InspectionRow> rows_;
  std::vector<std::optional<LineFault>> faults_;
  Verdict verdict_;
};

/// Writes JSON Lines in some detail. `languages` is the reader's choice, as for `account`.
LineGrader::Writer json_lines(const Program& program, std::span<const std::string> languages,
                              Detail detail);

}  // namespace heelrule
