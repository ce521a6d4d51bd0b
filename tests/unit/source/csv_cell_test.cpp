#include "engine/source/csv_cell.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

std::string cell(std::string_view text) {
  std::string row;
  append_csv_cell(row, text);
  return row;
}

std::vector<std::string> texts(std::string_view row) {
  std::vector<std::string> all;
  for (const CsvCell& one : split_csv_row(row).cells) {
    all.push_back(one.text);
  }
  return all;
}

using Texts = std::vector<std::string>;

TEST_CASE("a cell stands in quotes where it needs them") {
  CHECK(cell("C-014") == "C-014");
  CHECK(cell("") == "");
  CHECK(cell("navy, laced") == "\"navy, laced\"");
  CHECK(cell("so-called \"wide\"") == "\"so-called \"\"wide\"\"\"");
  CHECK(cell(" indented") == "\" indented\"");
}

TEST_CASE("a text that a spreadsheet would work out is kept from it") {
  CHECK(cell("=1+1") == "\"'=1+1\"");
  CHECK(cell("@SUM(A1)") == "\"'@SUM(A1)\"");
  CHECK(cell("-2") == "\"'-2\"");
  CHECK(cell(" \" =1") == "\"' \"\" =1\"");
  CHECK(cell("＝1") == "\"'＝1\"");
}

TEST_CASE("one row stays one line") { CHECK(cell("a\nb\tc") == "\"a b c\""); }

TEST_CASE("a row is cut at its commas") {
  CHECK(texts("a,b,c") == Texts{"a", "b", "c"});
  CHECK(texts("") == Texts{""});
  CHECK(texts(",") == Texts{"", ""});
  CHECK(texts("\"a,b\",\"say \"\"so\"\"\"") == Texts{"a,b", "say \"so\""});
}

TEST_CASE("what was kept from a spreadsheet is read as it was written") {
  for (const std::string text : {"=1+1", "-2", " \" =1", "＝1", "plain", "'quoted'", "it's"}) {
    CHECK(texts(cell(text)) == Texts{text});
  }
}

TEST_CASE("a row that is no RFC 4180 says where and why") {
  const CsvRow open = split_csv_row("a,\"b,c");
  CHECK(open.fault == "this quote is not closed on its line");
  CHECK(open.cells.back().begin == 2);
  CHECK(split_csv_row("a\"b,c").fault == "a quote stands inside a cell that is not in quotes");
  CHECK(split_csv_row("\"a\" b,c").fault ==
        "something stands between a closing quote and the next comma");
}

}  // namespace
}  // namespace heelrule
