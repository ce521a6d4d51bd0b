#include "engine/reading/read_pass_sheet.hpp"

#include <fmt/format.h>

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

Checked<PassSheet> read(std::string text) {
  Sources sources;
  const std::uint32_t source = sources.add("pass.yaml", std::move(text));
  return load_pass_sheet(sources, source);
}

TEST_CASE("a pass sheet is read with all its parts") {
  const auto sheet = read(
      "title: November\nmost: 40\nratings: [fail, border, pass]\nborderline: border\n"
      "students: {S-01: {mark: 31.5, rating: pass}, S-02: {mark: 12}}\n"
      "judges: {T-01: [60 %, 0.75]}\nacceptable: {marks: 20 .. 26.5, fails: 5 % .. 0.4}\n");
  REQUIRE(sheet);
  CHECK(sheet->title == "November");
  CHECK(sheet->most == 40);
  CHECK(sheet->borderline == 1);
  REQUIRE(sheet->students.size() == 2);
  CHECK(sheet->students[0].mark == 31.5);
  CHECK(sheet->students[0].rating == 2);
  CHECK(!sheet->students[1].rating);
  CHECK(sheet->judges[0].chances == std::vector<double>{0.6, 0.75});
  CHECK(sheet->acceptable->most_mark == 26.5);
  CHECK(sheet->acceptable->least_fails == 0.05);
}

TEST_CASE("more students than can be reckoned with are refused") {
  std::string text = "students:\n";
  for (int i = 0; i <= 10'000; ++i) {
    text += fmt::format("  S-{}: {{mark: 1}}\n", i);
  }
  CHECK(read(text).diagnostics().by_place().at(0).message == "there are more than 10000 students");
}

}  // namespace
}  // namespace heelrule
