#include "engine/report/fitting_account.hpp"

#include <algorithm>
#include <catch2/catch.hpp>

#include "engine/report/fitting_text.hpp"
#include "tests/unit/report/fitted.hpp"

namespace heelrule {
namespace {

std::vector<FittingSection> sections_of(const std::string& found, const std::string& numb = "no") {
  const Fitted sample = fitted(found, numb);
  return fitting_account(sample.graded.program, sample.graded.inspection, sample.graded.verdict,
                         sample.fitting, {});
}

std::string text_of(const std::string& found, const std::string& numb = "no") {
  const Fitted sample = fitted(found, numb);
  return fitting_text(sample.graded.program, sample.graded.inspection, sample.graded.verdict,
                      sample.fitting, {});
}

// The same in one line, so that words are found wherever lines break.
std::string unbroken(const std::string& text) {
  std::string line;
  for (const char c : text) {
    const bool blank = c == ' ' || c == '\n';
    if (!blank || (!line.empty() && line.back() != ' ')) {
      line += blank ? ' ' : c;
    }
  }
  return line;
}

// The lines of a section, or nothing.
std::vector<std::string> lines_of(const std::vector<FittingSection>& all,
                                  const std::string& title) {
  for (const FittingSection& section : all) {
    if (section.title == title) {
      return section.lines;
    }
  }
  return {};
}

using Lines = std::vector<std::string>;

constexpr const char* feet = "  foot_length: {left: 243 mm, right: 246 mm}\n";
const std::string more = std::string(feet) +
                         "  sock_marked: EU 36-38\n"
                         "  sock_foot_length: {left: 234 mm, right: 237 mm}\n"
                         "  cuff_mark: {left: groove, right: none}\n";

TEST_CASE("what was not recorded has no section") {
  const auto all = sections_of(feet);
  Lines titles;
  for (const FittingSection& section : all) {
    titles.push_back(section.title);
  }
  CHECK(titles == Lines{"The feet", "What to ask for", "When to measure again", "Please note"});
}

TEST_CASE("the feet are told with their doubt, and which one decides") {
  CHECK(lines_of(sections_of(feet), "The feet") ==
        Lines{"Standing: left 243 ± 2 mm, right 246 ± 2 mm (19 times in 20 the true length lies "
              "within ±).",
              "The right foot is longer by 3 ± 2.8 mm, and a pair is bought for it."});
  CHECK(lines_of(sections_of("  foot_length: {left: 243 mm}\n"), "The feet") ==
        Lines{"Standing: left 243 ± 2 mm. The other foot was not measured, and may be the longer "
              "one: measure both."});
  CHECK(lines_of(sections_of("  foot_length: 243 mm\n"), "The feet")[1] ==
        "Both feet are alike in length.");
}

TEST_CASE("what is judged alike of both feet is judged once") {
  const Lines lines = lines_of(
      sections_of(std::string(feet) + "  foot_length_seated: {left: 240 mm, right: 242 mm}\n"),
      "The feet");
  REQUIRE(lines.size() == 4);
  CHECK(lines[2] ==
        "Standing up lengthens the left foot by 3 ± 2.8 mm, 0.35 of a UK or US, 0.45 of an EU, 0.3 "
        "of "
        "a Mondopoint size.");
  CHECK(lines[3].ends_with("Up to half a size is usual (common practice)."));
}

TEST_CASE("a whole size under load is a sign, and no diagnosis") {
  const Lines lines = lines_of(
      sections_of(std::string(feet) + "  foot_length_seated: {left: 233 mm}\n"), "The feet");
  CHECK(
      lines[2].ends_with("The trade takes a whole size or more as a sign of a foot that flattens "
                         "under load (common practice, no diagnosis): measure once more."));
}

TEST_CASE("a yes to a safety question holds back every size and every choice") {
  const std::string text = unbroken(text_of(more, "yes"));
  CHECK(text.find("See a licensed practitioner first") < text.find("The feet"));
  CHECK(text.find("Are the feet numb? Yes. See a practitioner.") != std::string::npos);
  CHECK(text.find("Held back until a licensed practitioner has seen the feet.") !=
        std::string::npos);
  for (const std::string_view advice :
       {"inside length", "MP 245", "EU 39", "UK 6", "Take ", "look for a range", "wide cuff"}) {
    CAPTURE(advice);
    CHECK(text.find(advice) == std::string::npos);
  }
}

TEST_CASE("with a no the same feet are told what to ask for") {
  const std::string text = unbroken(text_of(more));
  for (const std::string_view advice : {"inside length", "MP 245", "EU 39", "UK 6",
                                        "Take longer socks", "look for a range", "wide cuff"}) {
    CAPTURE(advice);
    CHECK(text.find(advice) != std::string::npos);
  }
}

TEST_CASE("a safety question without an answer is asked before anything else") {
  const auto all = sections_of(feet, "not seen");
  REQUIRE_FALSE(all.empty());
  CHECK(all.front().title ==
        "Ask first: one yes, and a licensed practitioner comes before any shoe");
  CHECK(all.front().lines == Lines{"Are the feet numb?"});
  CHECK(all.front().urgent);
}

TEST_CASE("the cautions of the rule set stand at the foot") {
  const auto all = sections_of(feet);
  CHECK(all.back().lines.front().starts_with("Mind the feet."));
}

TEST_CASE("a rule set for children misses the age") {
  CHECK(lines_of(sections_of(feet), "When to measure again") ==
        Lines{"The age was not recorded, and without it nothing can be said about growth."});
}

TEST_CASE("a child's new pair is told with its dates") {
  const Lines lines =
      lines_of(sections_of("  foot_length: {left: 178 mm, right: 179 mm}\n  child_age: 4 years\n"),
               "When to measure again");
  REQUIRE(lines.size() == 3);
  CHECK(
      lines[0] ==
      "At 4 years feet grow by about 1 mm a month, 0.83 to 1.5 (common practice, near Gould 1990, "
      "half a size in 4 months; the range is from secondary sources).");
  CHECK(
      lines[1].starts_with("A new pair with 12 mm in front of the right foot has 7 ± 2 mm left to "
                           "grow into, and is outgrown about 2027-05-05 (earliest "));
  CHECK(lines[2] == "Measure again by 2026-12-02, at the latest: growth is not even.");
}

TEST_CASE("no line is wider than 80 columns") {
  const std::string text = text_of(more);
  std::size_t begin = 0;
  while (begin < text.size()) {
    const std::size_t end = text.find('\n', begin);
    const std::string_view line = std::string_view(text).substr(begin, end - begin);
    const auto letters =
        std::count_if(line.begin(), line.end(), [](char c) { return (c & 0xC0) != 0x80; });
    CHECK(letters <= 80);
    begin = end + 1;
  }
}

}  // namespace
}  // namespace heelrule
