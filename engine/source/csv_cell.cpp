#include "engine/source/csv_cell.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace heelrule {
namespace {

constexpr std::array<std::string_view, 8> formula_signs{"=", "+", "-", "@", "＝", "＋", "－", "＠"};

bool looks_like_formula(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \"'");
  if (first == std::string_view::npos) {
    return false;
  }
  const std::string_view rest = text.substr(first);
  return std::any_of(formula_signs.begin(), formula_signs.end(),
                     [&](std::string_view sign) { return rest.starts_with(sign); });
}

CsvCell plain_cell(std::string_view row, std::size_t begin, std::string_view& fault) {
  const std::size_t end = std::min(row.find(',', begin), row.size());
  CsvCell cell{std::string(row.substr(begin, end - begin)), begin, end};
  if (cell.text.find('"') != std::string::npos) {
    fault = "a quote stands inside a cell that is not in quotes";
  }
  return cell;
}

// Two quotes inside of quotes are one of the text.
CsvCell quoted_cell(std::string_view row, std::size_t begin, std::string_view& fault) {
  CsvCell cell{{}, begin, row.size()};
  std::size_t at = begin + 1;
  for (; at < row.size(); ++at) {
    if (row[at] == '"' && !(at + 1 < row.size() && row[at + 1] == '"')) {
      break;
    }
    cell.text += row[at];
    at += row[at] == '"' ? 1 : 0;
  }
  cell.end = std::min(at + 1, row.size());
  if (at == row.size()) {
    fault = "this quote is not closed on its line";
  } else if (cell.end < row.size() && row[cell.end] != ',') {
    fault = "something stands between a closing quote and the next comma";
  }
  return cell;
}

}  // namespace

void append_csv_cell(std::string& row, std::string_view text) {
  const bool guarded = looks_like_formula(text);
  const bool quoted = guarded || text.find_first_of(",\"\r\n") != std::string_view::npos ||
                      text.starts_with(' ') || text.ends_with(' ');
  if (quoted) {
    row += '"';
  }
  if (guarded) {
    row += '\'';
  }
  for (const char c : text) {
    if (c == '"') {
      row += '"';
    }
    const bool control = static_cast<unsigned char>(c) < 0x20 || c == 0x7F;
    row += control ? ' ' : c;
  }
  if (quoted) {
    row += '"';
  }
}

CsvRow split_csv_row(std::string_view row) {
  CsvRow split;
  std::size_t at = 0;
  while (true) {
    const bool quoted = at < row.size() && row[at] == '"';
    CsvCell cell = quoted ? quoted_cell(row, at, split.fault) : plain_cell(row, at, split.fault);
    if (cell.text.starts_with('\'') && looks_like_formula(cell.text)) {
      cell.text.erase(0, 1);
    }
    at = cell.end + 1;
    const bool is_last = cell.end == row.size();
    split.cells.push_back(std::move(cell));
    if (is_last || !split.fault.empty()) {
      return split;
    }
  }
}

}  // namespace heelrule
