#include "engine/report/finding_table.hpp"

#include <catch2/catch.hpp>

#include "engine/source/csv_cell.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const std::string bands =
    "[{name: short, below: 6 mm, earns: 0, advice: Try the next length., caution: Measure twice.},"
    " {name: close, below: 10 mm, earns: 50 %}, {name: right, earns: 100 %}]";

// The rows as a spreadsheet would have them, the header first.
std::vector<std::vector<std::string>> rows(const Graded& sample) {
  std::vector<std::vector<std::string>> all;
  const std::string text =
      finding_table_header() + finding_table(sample.program, sample.inspection, sample.verdict, {});
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find('\n', at);
    const CsvRow row = split_csv_row(std::string_view(text).substr(at, end - at));
    CHECK(row.fault.empty());
    all.emplace_back();
    for (const CsvCell& cell : row.cells) {
      all.back().push_back(cell.text);
    }
    at = end + 1;
  }
  return all;
}

std::string cell(const std::vector<std::vector<std::string>>& table, std::size_t row,
                 const std::string& column) {
  for (std::size_t i = 0; i < table[0].size(); ++i) {
    if (table[0][i] == column) {
      return table.at(row).at(i);
    }
  }
  FAIL(column);
  return "";
}

TEST_CASE("each finding is a row, and so is each thing that is said of it") {
  const auto table = rows(graded(one_rule(bands), one_record("5 mm", "8 mm")));
  REQUIRE(table.size() == 4);
  for (const auto& row : table) {
    CHECK(row.size() == table[0].size());
  }
  CHECK(cell(table, 1, "kind") == "finding");
  CHECK(cell(table, 1, "rule") == "space");
  CHECK(cell(table, 1, "status") == "fail");
  CHECK(cell(table, 1, "left") == "5 mm");
  CHECK(cell(table, 1, "right") == "8 mm");
  CHECK(cell(table, 1, "value").empty());
  CHECK(cell(table, 1, "weight") == "4");
  CHECK(cell(table, 1, "earned") == "0");
  CHECK(cell(table, 1, "gain") == "100");
  CHECK(cell(table, 1, "grade") == "unfit");
  CHECK(cell(table, 1, "source") == "common practice");
  CHECK(cell(table, 2, "kind") == "caution");
  CHECK(cell(table, 2, "words") == "Measure twice.");
  CHECK(cell(table, 3, "kind") == "advice");
}

TEST_CASE("what was not seen has no numbers of its own") {
  const auto table = rows(graded(one_rule(bands), "inspection: {rules: house}\n"));
  CHECK(cell(table, 1, "status") == "not seen");
  CHECK(cell(table, 1, "earned").empty());
  CHECK(cell(table, 1, "points").empty());
}

TEST_CASE("no cell is a formula to a spreadsheet") {
  // CWE-1236; OWASP ASVS 5, 1.2.10: a text that begins with = + - @ gets an apostrophe in front.
  Graded sample = graded(one_rule(bands), one_record("5 mm", "8 mm"));
  sample.inspection.client = "=1+1";
  sample.inspection.shoe_label = "@SUM(A1)\nnext";
  const std::string text = finding_table(sample.program, sample.inspection, sample.verdict, {});
  CHECK(text.starts_with("\"'=1+1\","));
  CHECK(text.find(",\"'@SUM(A1) next\",") != std::string::npos);
}

}  // namespace
}  // namespace heelrule
