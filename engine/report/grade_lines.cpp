#include "engine/report/grade_lines.hpp"

#include <utility>

#include "engine/report/fault_line.hpp"
#include "engine/scoring/decide.hpp"
#include "engine/scoring/fill_row.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {

LineGrader::LineGrader(const Program& program, Reader reader, Writer writer,
                       const GradingOrder& order)
    : program_(program),
      reader_(std::move(reader)),
      writer_(std::move(writer)),
      order_(order),
      block_(program),
      rows_(block_rows) {}

void LineGrader::grade(const Lines& lines, GradedLines& graded) {
  graded.text.clear();
  graded.complaints.clear();
  graded.bytes = lines.text.size();
  graded.lines = graded.faulty = 0;
  graded.is_cut_short = graded.falls_short = false;
  std::string_view rest = lines.text;
  std::size_t count = 0;
  while (!rest.empty() && !graded.is_cut_short) {
    const std::size_t end = std::min(rest.find('\n'), rest.size());
    std::string_view line = rest.substr(0, end);
    rest.remove_prefix(std::min(end + 1, rest.size()));
    if (line.ends_with('\r')) {
      line.remove_suffix(1);
    }
    read(line, lines.first_line + graded.lines, rows_[count]);
    graded.is_cut_short = rows_[count].fault && order_.stop_at_fault;
    ++graded.lines;
    ++count;
    if (count == block_rows) {
      write(std::exchange(count, 0), graded);
    }
  }
  write(count, graded);
}

void LineGrader::read(std::string_view line, std::uint64_t number, Row& row) {
  row.fault =
      std::visit([&](auto& reader) { return reader.read(line, number, row.values); }, reader_);
}

void LineGrader::write(std::size_t count, GradedLines& graded) {
  for (std::size_t i = 0; i < count; ++i) {
    if (!rows_[i].fault) {
      fill_row(program_, rows_[i].values, block_, i);
    }
  }
  evaluate(program_, block_);
  for (std::size_t i = 0; i < count; ++i) {
    if (rows_[i].fault) {
      write_fault(*rows_[i].fault, graded);
      continue;
    }
    decide(program_, block_, i, order_.detail, verdict_);
    graded.falls_short =
        graded.falls_short ||
        (order_.at_least && (!verdict_.grade || verdict_.lowest_grade > *order_.at_least));
    std::visit(
        [&](auto& writer) { writer.append(rows_[i].values.inspection, verdict_, graded.text); },
        writer_);
  }
}

void LineGrader::write_fault(const LineFault& fault, GradedLines& graded) {
  ++graded.faulty;
  if (graded.faulty <= order_.most_complaints) {
    graded.complaints.push_back(show(fault.diagnostics, fault.sources));
  }
  if (const auto* table = std::get_if<VerdictTable>(&writer_)) {
    table->append(fault, graded.text);
  } else {
    append_fault_line(fault, graded.text);
  }
}

}  // namespace heelrule
