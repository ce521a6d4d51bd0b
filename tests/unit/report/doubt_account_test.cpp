#include "engine/report/doubt_account.hpp"

#include <catch2/catch.hpp>

#include "engine/report/chance_words.hpp"
#include "engine/report/json_report.hpp"
#include "engine/report/text_report.hpp"
#include "tests/unit/doubt/doubted.hpp"

namespace heelrule {
namespace {

const std::string window =
    "bands: [{name: short, below: 10 mm, earns: 0}, {name: right, up to: 15 mm, earns: 100 %}, "
    "{name: long, earns: 50 %}]";

Doubted gap(const std::string& found, const std::string& more_of_rule = "",
            const std::string& more = "") {
  return doubted(house("  gap: {ask: Gap, measure: mm, per: shoe, doubt: 1 mm}\n",
                       rule("gap", "1", window, more_of_rule), more),
                 found);
}

DoubtAccount told(const Doubted& sample) {
  const Account words = account(sample.program, sample.inspection, sample.verdict, {});
  return doubt_account(sample.program, sample.verdict, sample.doubt, words, {});
}

TEST_CASE("a chance is never printed as certain, or as its limit, unless it is") {
  CHECK(chance_words(0) == "0 %");
  CHECK(chance_words(1) == "100 %");
  CHECK(chance_words(0.0049) == "under 1 %");
  CHECK(chance_words(0.9951) == "over 99 %");
  CHECK(chance_words(0.625) == "63 %");
  CHECK(chance_words(0.9496, 0.95) == "94.9 %");
  CHECK(chance_words(0.95, 0.95) == "95 %");
  CHECK(chance_words(0.944, 0.95) == "94 %");
}

TEST_CASE("each finding is clear or within doubt, in four words and two") {
  const auto words = [&](const std::string& found) { return told(gap(found)).findings[0].words; };
  CHECK(words("{gap: 12.5 mm}") == "clear pass");
  CHECK(words("{gap: 11 mm}") == "pass within doubt");
  CHECK(words("{gap: 9 mm}") == "fail within doubt");
  CHECK(words("{gap: 5 mm}") == "clear fail");
  CHECK(words("{gap: 20 mm}") == "clearly in part");
  CHECK(words("{gap: 15.5 mm}") == "in part within doubt");
  CHECK(words("{gap: not seen}").empty());
}

TEST_CASE("a finding says how sure it is, what it may be instead, and with what doubt") {
  CHECK(told(gap("{gap: 9 mm}")).findings[0].sentence ==
        "Doubt: fail within doubt, 85 % sure; else a pass 15 % (± 2 mm).");
}

TEST_CASE("what to read again and how little would move the grade is said in sentences") {
  const DoubtAccount account = told(gap("{gap: {left: 9 mm, right: 12.5 mm}}"));
  CHECK(account.grade.starts_with(
      "The grade takes the readings as they were recorded. By how exactly they can be read, it is "
      "unfit with a chance of "));
  CHECK(account.take_again_first.starts_with("Take this reading again first: \"Gap (left)\"."));
  CHECK(account.fewest ==
        "One reading a little off would make the grade sound: \"Gap (left)\", 11 mm in place of 9 "
        "mm.");
  CHECK(account.within_doubt ==
        "1 of 1 findings is within doubt, less than 95 % sure; it says so below.");
}

TEST_CASE("a rule that protects and is not accepted is named, with what to take it for") {
  const DoubtAccount account = told(gap("{gap: {left: 12.5 mm, right: 10.5 mm}}", ", protects: yes",
                                        "decision: {guard: 1.645}\n"));
  REQUIRE(account.guarded.size() == 1);
  CHECK(account.guarded[0] ==
        "Gap, right: 10.5 mm lies too close to short (below 10 mm); take it as a fail until it has "
        "been measured again.");
}

const std::string mended =
    "changes:\n"
    "  longer: {title: take a longer pair, adds: {gap: 4 mm}, source: common practice}\n";

TEST_CASE("what would have to be changed for a better grade is said") {
  CHECK(told(gap("{gap: 8 mm}", "", mended)).better ==
        std::vector<std::string>{"To make it sound, one change is enough: take a longer pair."});
  CHECK(told(gap("{gap: 3 mm}", "", mended)).better ==
        std::vector<std::string>{"No change that the rules know of makes it sound or usable."});
  CHECK(told(gap("{gap: 12 mm}", "", mended)).better.empty());
}

TEST_CASE("changes are held back where a practitioner comes first") {
  const Doubted sample = gap("{gap: 8 mm}", ", referral: See a practitioner first", mended);
  CHECK(sample.verdict.refers());
  CHECK(told(sample).better.empty());
  const std::string json =
      json_report(sample.program, sample.inspection, sample.verdict, {}, &sample.doubt);
  CHECK(json.find("longer") == std::string::npos);
  const std::string text =
      text_report(sample.program, sample.inspection, sample.verdict, {}, &sample.doubt);
  CHECK(text.find("longer") == std::string::npos);
}

TEST_CASE("a report without doubt says nothing of it") {
  const Doubted sample = gap("{gap: 9 mm}");
  const std::string text = text_report(sample.program, sample.inspection, sample.verdict, {});
  const std::string json = json_report(sample.program, sample.inspection, sample.verdict, {});
  CHECK(text.find("oubt") == std::string::npos);
  CHECK(json.find("doubt") == std::string::npos);
  CHECK(text_report(sample.program, sample.inspection, sample.verdict, {}, &sample.doubt)
            .find("How sure this is") != std::string::npos);
  CHECK(json_report(sample.program, sample.inspection, sample.verdict, {}, &sample.doubt)
            .find("\"doubt\"") != std::string::npos);
}

TEST_CASE("where no reading is in doubt it is said, and nothing else") {
  const Doubted sample =
      doubted(house("  closed: {ask: Closed by, choice: [laces, zip, none]}\n",
                    rule("closed", "1", "levels: {laces: 100 %, zip: 50 %, none: 0}")),
              "{closed: laces}");
  const DoubtAccount account = told(sample);
  CHECK(account.grade == "No reading that counts is in doubt.");
  CHECK(account.take_again_first.empty());
  CHECK(account.fewest.empty());
  CHECK(account.chances.empty());
  CHECK(account.findings[0].words == "clear pass");
  CHECK(account.findings[0].sentence.empty());
}

}  // namespace
}  // namespace heelrule
