#include "engine/report/grade_lines.hpp"

#include <utility>

#include "engine/report/fault_line.hpp"
#include "engine/scoring/decide.hpp"
#include "engine/scoring/fill_row.hpp"
#include "engine/scoring/grade_reach.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {

LineGrader::LineGrader(const Program& program, Reader reader, Writer writer,
                       const GradingOrder& order)
    : program_(program),
      reader_(std::move(reader)),
      writer_(std::move(writer)),
      order_(order),
      block_(program),
      lines_(block_rows),
      rows_(block_rows),
      faults_(block_rows) {}

void LineGrader::grade(const Lines& lines, GradedLines& graded) {
  graded.text.clear();
  graded.complaints.clear();
  graded.bytes = lines.text.size();
  graded.lines = graded.faulty = 0;
  graded.is_cut_short = graded.falls_short = false;
  std::string_view rest = lines.text;
  while (!rest.empty() && !graded.is_cut_short) {
    const std::size_t count = cut(rest);
    write(read(count, lines.first_line + graded.lines), graded);
  }
}

// Lines are cut before they are read: to look for line feeds alone is so quick that it fetches the
// text for those who read it.
std::size_t LineGrader::cut(std::string_view& rest) {
  std::size_t count = 0;
  for (; count < block_rows && !rest.empty(); ++count) {
    const std::size_t end = std::min(rest.find('\n'), rest.size());
    std::string_view& line = lines_[count];
    line = rest.substr(0, end);
    rest.remove_prefix(std::min(end + 1, rest.size()));
    if (line.ends_with('\r')) {
      line.remove_suffix(1);
    }
  }
  return count;
}

std::size_t LineGrader::read(std::size_t count, std::uint64_t first_line) {
  return std::visit([&](auto& reader) { return read_with(reader, count, first_line); }, reader_);
}

template <class OneReader>
std::size_t LineGrader::read_with(OneReader& reader, std::size_t count, std::uint64_t first_line) {
  for (std::size_t i = 0; i < count; ++i) {
    faults_[i] = reader.read(lines_[i], first_line + i, rows_[i]);
    if (!faults_[i]) {
      fill_row(program_, rows_[i], block_, i);
    } else if (order_.stop_at_fault) {
      return i + 1;
    }
  }
  return count;
}

void LineGrader::write(std::size_t count, GradedLines& graded) {
  graded.lines += count;
  evaluate(program_, block_);
  if (auto* const writer = std::get_if<ShortLines>(&writer_)) {
    writer->turn_to(block_, std::span(rows_).first(count));
  }
  for (std::size_t row = 0; row < count; ++row) {
    if (faults_[row]) {
      write_fault(*faults_[row], graded);
    } else {
      graded.falls_short = graded.falls_short || falls_short(row);
      write_verdict(row, graded.text);
    }
  }
}

void LineGrader::write_verdict(std::size_t row, GrowingText& text) {
  if (auto* const writer = std::get_if<ShortLines>(&writer_)) {
    writer->append(row, text);
    return;
  }
  decide(program_, block_, row, verdict_);
  if (auto* const writer = std::get_if<VerdictLines>(&writer_)) {
    writer->append(rows_[row].inspection, verdict_, text);
  } else {
    std::get<VerdictTable>(writer_).append(rows_[row].inspection, verdict_, text);
  }
}

bool LineGrader::falls_short(std::size_t row) const {
  if (!order_.at_least) {
    return false;
  }
  const GradeReach reach = grade_reach(program_, block_.outcome(row));
  return !reach.grade || reach.lowest > *order_.at_least;
}

void LineGrader::write_fault(const LineFault& fault, GradedLines& graded) {
  ++graded.faulty;
  graded.is_cut_short = order_.stop_at_fault;
  if (graded.faulty <= order_.most_complaints) {
    graded.complaints.push_back(show(fault.diagnostics, fault.sources));
  }
  const auto* table = std::get_if<VerdictTable>(&writer_);
  graded.text.put(table != nullptr ? table->row(fault) : fault_line(fault));
}

LineGrader::Writer json_lines(const Program& program, std::span<const std::string> languages,
                              Detail detail) {
  return detail == Detail::full ? LineGrader::Writer(VerdictLines(program, languages))
                                : LineGrader::Writer(ShortLines(program, languages, detail));
}

}  // namespace heelrule
