#include "engine/report/recorded_words.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const std::string rules =
    "title: House\nsections: {fit: {title: Fit}}\n"
    "traits:\n"
    "  gap: {ask: Gap, measure: mm, per: shoe, plausible: 5 mm .. 20 mm, doubt: 1 mm}\n"
    "  counter: {ask: Counter, scale: [soft, very_firm]}\n"
    "  touches: {ask: Touches, answer: yes or no}\n"
    "  fibres: {ask: Fibres, content: fibres}\n"
    "  size: {ask: Size, marked: shoe size}\n"
    "  socks: {ask: Socks, marked: sock range}\n"
    "rules: {gap: {section: fit, weight: 1, reads: gap, because: B., source: common practice,"
    " bands: [{name: any, earns: 100 %}]}}\n"
    "grades: {a: {from: 0, means: M.}}\n";

std::string words(const std::string& trait, const std::string& value) {
  const Graded sample =
      graded(rules, "inspection: {rules: house}\nfound: {" + trait + ": " + value + "}\n");
  return recorded_words(sample.program.rules, sample.inspection.observations.front());
}

std::string doubt(const std::string& trait, const std::string& value) {
  const Graded sample =
      graded(rules, "inspection: {rules: house}\nfound: {" + trait + ": " + value + "}\n");
  return recorded_doubt_words(sample.program.rules, sample.inspection.observations.front());
}

TEST_CASE("every kind of value has words") {
  CHECK(words("gap", "{left: 12.5 mm}") == "12.5 mm");
  CHECK(words("counter", "very_firm") == "very firm");
  CHECK(words("touches", "no") == "no");
  CHECK(words("fibres", "{cotton: 80 %, elastane: 20 %}") == "80 % cotton, 20 % elastane");
  CHECK(words("size", "EU 39") == "EU 39");
  CHECK(words("socks", "EU 39-42") == "EU 39-42");
  CHECK(words("counter", "{not seen: too dark}") == "not seen: too dark");
  CHECK(words("counter", "not seen") == "not seen");
}

TEST_CASE("repeats are all told, in the unit of their trait, with their mean") {
  CHECK(words("gap", "{left: [1.2, 1.3 cm]}") == "12, 13 mm, mean 12.5 mm");
}

TEST_CASE("a reading outside of what is plausible says that it was confirmed") {
  CHECK(words("gap", "{left: {value: 31 mm, confirmed: yes}}") == "31 mm, confirmed");
}

TEST_CASE("the doubt is the record's, else the trait's, and none for what is no measure") {
  CHECK(doubt("gap", "{left: {value: 12 mm, doubt: 2 mm}}") == "2 mm");
  CHECK(doubt("gap", "{left: 12 mm}") == "1 mm");
  CHECK(doubt("counter", "soft").empty());
}

}  // namespace
}  // namespace heelrule
