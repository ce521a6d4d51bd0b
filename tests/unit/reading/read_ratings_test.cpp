#include "engine/reading/read_ratings.hpp"

#include <catch2/catch.hpp>
#include <cmath>

namespace heelrule {
namespace {

Checked<RatingTable> read(std::string text, const std::vector<std::string>& scale = {}) {
  Sources sources;
  const std::uint32_t source = sources.add("ratings.csv", std::move(text));
  return read_ratings(sources, source, scale);
}

TEST_CASE("a first column `subject` names the rows") {
  const auto table = read("subject,A,B\nshoe 1,firm,soft\nshoe 2,,firm\n");
  REQUIRE(table);
  CHECK(table->kind == RatingKind::names);
  CHECK(table->subjects == std::vector<std::string>{"shoe 1", "shoe 2"});
  CHECK(table->observers == std::vector<std::string>{"A", "B"});
  CHECK(table->levels == std::vector<std::string>{"firm", "soft"});
  CHECK(table->cells[1] == 1);
  CHECK(std::isnan(table->cells[2]));
}

TEST_CASE("a table of numbers holds numbers, and levels where a scale is declared") {
  const auto numbers = read("A,B\n243,242.5\n-1,not seen\n");
  REQUIRE(numbers);
  CHECK(numbers->kind == RatingKind::numbers);
  CHECK(numbers->cells[1] == 242.5);
  const auto long_ones = read("A,B\n7.500909090909091,-0.30000000000000004\n");
  REQUIRE(long_ones);
  CHECK(long_ones->cells == std::vector<double>{7.500909090909091, -0.30000000000000004});
  const auto levels = read("A,B\n1,3\n2.0,1\n", {"1", "2", "3"});
  REQUIRE(levels);
  CHECK(levels->kind == RatingKind::levels);
  CHECK(levels->level_numbers == std::vector<double>{1, 2, 3});
  CHECK(levels->cells == std::vector<double>{0, 2, 1, 0});
}

TEST_CASE("a table without names of observers is known by its first line") {
  const auto table = read("9,2,5\n6,1,3\n");
  REQUIRE(table);
  CHECK(table->observers == std::vector<std::string>{"1", "2", "3"});
  CHECK(table->subjects.size() == 2);
  CHECK(!read("1,2,3\n6,1,3\n"));
}

TEST_CASE("line ends of other systems, quotes and blanks change nothing") {
  const auto table = read("\"A\", B\r\n\"very, firm\",soft\r\nsoft , soft\r\n");
  REQUIRE(table);
  CHECK(table->observers == std::vector<std::string>{"A", "B"});
  CHECK(table->levels == std::vector<std::string>{"soft", "very, firm"});
}

TEST_CASE("a scale is written lowest first, with commas") {
  const auto scale = parse_scale("soft, medium,firm");
  REQUIRE(scale);
  CHECK(*scale == std::vector<std::string>{"soft", "medium", "firm"});
  CHECK(!parse_scale("soft"));
  CHECK(!parse_scale("soft,,firm"));
  CHECK(!parse_scale("soft,soft"));
}

TEST_CASE("tables beyond the limits are refused") {
  std::string wide = "A0";
  for (int i = 1; i <= 100; ++i) {
    wide += ",A" + std::to_string(i);
  }
  const auto first_fault = [](const Checked<RatingTable>& table) {
    const Diagnostic fault = table.diagnostics().by_place().at(0);
    return fault.message + "; " + fault.hint;
  };
  CHECK(first_fault(read(wide + "\n1\n")) ==
        "there are more than 100 observers; take fewer at a time");
  std::string words = "A,B\n";
  for (int i = 0; i <= 100; ++i) {
    words += "w" + std::to_string(i) + ",\n";
  }
  const std::string what_to_do = "write each as a number, or as one of a few words";
  CHECK(first_fault(read(words)) ==
        "there are more than 100 different ratings that are no numbers; " + what_to_do);
  std::string tall = "A,B\n";
  for (int i = 0; i <= 20'000; ++i) {
    tall += "1,1\n";
  }
  CHECK(first_fault(read(tall)) == "there are more than 20000 subjects; take fewer at a time");
  CHECK(first_fault(read("A,B\n")) ==
        "there are no ratings below the names of the observers; write a row for each subject");
}

}  // namespace
}  // namespace heelrule
