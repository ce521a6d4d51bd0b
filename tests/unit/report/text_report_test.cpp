#include "engine/report/text_report.hpp"

#include <catch2/catch.hpp>

#include "engine/source/characters.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

// One rule for each part that a report can have.
const std::string house = R"(title: House
sections:
  fit: {title: Fit}
  build: {title: Build}
safety:
  numb: {ask: "Are the feet numb?", per: client, referral: See somebody about the feeling.}
  wound: {ask: "Is there a wound?", per: client, referral: See somebody about the wound.}
traits:
  a: {ask: Question a, measure: mm}
  b: {ask: Question b, measure: mm}
  c: {ask: Question c, measure: mm}
  d: {ask: Question d, answer: yes or no}
grades: {good: {from: 80, means: Keep it.}, poor: {from: 0, means: Leave it.}}
cautions: {none: This is no diagnosis.}
)";

std::string rule(const std::string& name, const std::string& trait, const std::string& more) {
  return "  " + name + ": {section: fit, weight: 1, reads: " + trait +
         ", because: Reason., source: common practice, bands: [{name: low, below: 10 mm, earns: 0},"
         " {name: middle, below: 20 mm, earns: 50 %}, {name: high, earns: 100 %}]" +
         more + "}\n";
}

std::string house_rules() {
  return house + "rules:\n" +
         rule("first", "a", ", must: {caps: poor}, referral: See somebody., caution: Mind it.") +
         rule("second", "b", ", advice: Do something.") + rule("third", "c", "") +
         rule("fourth", "a", ", applies: d, advice: Do more.");
}

std::string report(const std::string& record, bool colour = false) {
  const Graded sample = graded(house_rules(), "inspection: {rules: house}\n" + record);
  return text_report(sample.program, sample.inspection, sample.verdict, {colour, {}});
}

// The headings in order: the lines that follow an empty line and are not indented.
std::vector<std::string> headings(const std::string& text) {
  std::vector<std::string> found;
  for (std::size_t at = text.find("\n\n"); at != std::string::npos;
       at = text.find("\n\n", at + 1)) {
    const std::size_t begin = at + 2;
    if (text[begin] != ' ') {
      found.push_back(text.substr(begin, text.find('\n', begin) - begin));
    }
  }
  return found;
}

TEST_CASE("safety comes first, then grade, findings and words, and the usual cautions last") {
  const std::string text = report(
      "safety: {numb: yes, wound: {not seen: bandaged}}\nfound: {a: 5 mm, b: 15 mm, d: no}\n");
  CHECK(headings(text) == std::vector<std::string>{
                              "See a licensed practitioner first",
                              "Safety questions without an answer: ask them first", "Grade: poor",
                              "Failed", "Passed in part", "Not seen", "Does not apply here",
                              "Cautions", "Advice held back", "Please note"});
  CHECK(
      text.ends_with("Please note\n"
                     "  - This is no diagnosis.\n"
                     "  - This report follows house rules. Local codes and licensed practice come\n"
                     "    before them.\n"));
}

TEST_CASE("parts that would be empty are left out") {
  const std::string text =
      report("safety: {numb: no, wound: no}\nfound: {a: 25 mm, b: 25 mm, c: 25 mm, d: yes}\n");
  CHECK(headings(text) ==
        std::vector<std::string>{"Safety", "Grade: good", "Passed", "Please note"});
  CHECK(text.find("\n\n\n") == std::string::npos);
}

TEST_CASE("a report on nothing has no grade, and asks the safety questions") {
  const std::string text = report("");
  CHECK(headings(text) ==
        std::vector<std::string>{"Safety questions without an answer: ask them first", "No grade",
                                 "Not seen", "Please note"});
  CHECK(text.find("Score") == std::string::npos);
}

TEST_CASE("the referral of a yes and that of a rule stand together at the top") {
  const std::string text =
      report("safety: {numb: {value: yes, note: since May}, wound: no}\nfound: {a: 5 mm}\n");
  CHECK(text.find("See a licensed practitioner first\n"
                  "  - Are the feet numb? Yes. See somebody about the feeling.\n"
                  "      Noted: since May\n"
                  "  - First: See somebody.\n"
                  "\n"
                  "Grade: poor") != std::string::npos);
}

TEST_CASE("a rule's referral is at the top where all safety answers are no") {
  const std::string text = report("safety: {numb: no, wound: no}\nfound: {a: 5 mm}\n");
  CHECK(text.find("See a licensed practitioner first\n  - First: See somebody.\n") !=
        std::string::npos);
}

TEST_CASE("a note beside a no is told") {
  CHECK(report("safety: {numb: {value: no, note: tested twice}, wound: no}\n")
            .find("Safety\n"
                  "  - All safety questions were answered with no.\n"
                  "  - Are the feet numb? No.\n"
                  "      Noted: tested twice\n") != std::string::npos);
}

TEST_CASE("held advice is counted and not told") {
  const std::string held =
      report("safety: {numb: yes, wound: no}\nfound: {a: 25 mm, b: 5 mm, d: no}\n");
  CHECK(held.find("1 piece of advice is held back until a licensed practitioner") !=
        std::string::npos);
  CHECK(held.find("Do something") == std::string::npos);
  const std::string two =
      report("safety: {numb: yes, wound: no}\nfound: {a: 5 mm, b: 5 mm, d: yes}\n");
  CHECK(two.find("2 pieces of advice are held back until") != std::string::npos);
}

TEST_CASE("advice says what it would gain, in points of the whole score") {
  const std::string text =
      report("safety: {numb: no, wound: no}\nfound: {a: 25 mm, b: 15 mm, d: no}\n");
  CHECK(text.find("  1. Second: Do something. (up to 25 points)\n") != std::string::npos);
}

TEST_CASE("a finding tells what it read, what it earned, why, and by what source") {
  const std::string text = report("safety: {numb: no, wound: no}\nfound: {a: 5 mm, d: no}\n");
  CHECK(text.find("Failed\n"
                  "  - First: 5 mm (earns 0 of 1, must)\n"
                  "      5 mm is low (below 10 mm), 5 mm short of 10 mm.\n"
                  "      Why: Reason.\n"
                  "      Source: common practice\n") != std::string::npos);
}

TEST_CASE("colour takes no word away and adds none") {
  const std::string record = "safety: {numb: yes}\nfound: {a: 5 mm, b: 15 mm}\n";
  std::string painted = report(record, true);
  CHECK(painted.find("\x1b[1;31mSee a licensed practitioner first\x1b[0m") != std::string::npos);
  for (std::size_t at = painted.find('\x1b'); at != std::string::npos; at = painted.find('\x1b')) {
    painted.erase(at, painted.find('m', at) - at + 1);
  }
  CHECK(painted == report(record));
}

TEST_CASE("what a record says cannot leave its line or reach the terminal") {
  const Graded sample = graded(house_rules(), "inspection: {rules: house}\n");
  Inspection hostile = sample.inspection;
  hostile.client = "C-1\x1b[2J";
  hostile.shoe_label = "red\n\nGrade: good";
  hostile.note =
      "\xe2\x80\xae"
      "doog";
  const std::string text = text_report(sample.program, hostile, sample.verdict, {false, {}});
  CHECK(text.find("client C-1\\x1b[2J · red Grade: good\nrules house\nNote: \\u202edoog\n") !=
        std::string::npos);
  CHECK(text.find('\x1b') == std::string::npos);
  CHECK(text.find("\nGrade:") == std::string::npos);
}

}  // namespace
}  // namespace heelrule
