#include "engine/report/json_report.hpp"

#include <simdjson.h>

#include <catch2/catch.hpp>

#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const std::string bands =
    "[{name: short, below: 10 mm, earns: 0, advice: Longer.}, {name: right, earns: 100 %}]";

std::string report(const std::string& record, const std::string& more = "") {
  const Graded sample = graded(one_rule(bands, more), record);
  return json_report(sample.program, sample.inspection, sample.verdict, {});
}

// The value at a path such as `/findings/0/status`, as JSON.
std::string at(const std::string& json, const std::string& path) {
  simdjson::dom::parser parser;
  const simdjson::dom::element found = parser.parse(json).at_pointer(path);
  return simdjson::minify(found);
}

TEST_CASE("a report names its format and version") {
  const std::string json = report(one_record("9 mm", "12 mm"));
  CHECK(json.starts_with("{\n  \"format\": \"heelrule verdict\",\n  \"version\": 1,\n"));
  CHECK(json.ends_with("\n}\n"));
}

TEST_CASE("a finding holds what was read, what it earned, and what it would have taken") {
  const std::string json = report(one_record("8.5 mm", "12 mm"), "    must: {caps: unfit}\n");
  CHECK(at(json, "/findings/0/status") == "\"fail\"");
  CHECK(at(json, "/findings/0/weight") == "4");
  CHECK(at(json, "/findings/0/credit") == "0");
  CHECK(at(json, "/findings/0/gain") == "100");
  CHECK(at(json, "/findings/0/caps_at") == "\"unfit\"");
  CHECK(at(json, "/findings/0/readings/0") ==
        R"({"side":"left","value":"8.5 mm","number":8.5,"unit":"mm","band":"short","credit":0,)"
        R"("limit":10,"short_by":1.5})");
  CHECK(at(json, "/findings/0/readings/1") ==
        R"({"side":"right","value":"12 mm","number":12,"unit":"mm","band":"right","credit":1})");
  CHECK(at(json, "/advice/0") ==
        R"({"rule":"space","title":"Space","words":"Longer.","gain":100})");
}

TEST_CASE("what was not seen has neither credit nor gain, and says what is missing") {
  const std::string json = report(one_record("not seen", "12 mm"));
  CHECK(at(json, "/findings/0/status") == "\"not seen\"");
  CHECK(at(json, "/findings/0/credit") == "null");
  CHECK(at(json, "/findings/0/gain") == "null");
  CHECK(at(json, "/findings/0/caps_at") == "null");
  CHECK(at(json, "/findings/0/missing") == R"([{"trait":"gap","side":"left"}])");
  CHECK(at(json, "/grade/name") == "null");
  CHECK(at(json, "/score") ==
        R"({"points":null,"lowest":0,"highest":100,"weight_seen":0,"weight_open":4})");
  CHECK(at(json, "/would_settle") == "[\"Gap before the toe (left)\"]");
}

TEST_CASE("a grade that the score alone would not give tells both") {
  const std::string json = report(one_record("9 mm", "12 mm"));
  CHECK(at(json, "/grade/name") == "\"unfit\"");
  CHECK(at(json, "/grade/by_score_alone") == "\"unfit\"");
  CHECK(at(json, "/grade/stands") == "true");
}

TEST_CASE("levels and answers name their band as the rule set does") {
  const std::string rules = R"(title: House
sections: {fit: {title: Fit}}
safety: {numb: {ask: Numb, per: foot, referral: See somebody.}}
traits:
  lace: {ask: Fastening, choice: [laces, hook and loop]}
  dry: {ask: Dry, answer: yes or no}
rules:
  lacing: {section: fit, weight: 1, reads: lace, because: Hold., source: common practice,
    levels: {laces: 100 %, hook and loop: 50 %}}
  dryness: {section: fit, weight: 1, reads: dry, because: Skin., source: common practice,
    levels: {yes: 100 %, no: 0}}
grades: {sound: {from: 50, means: Keep it.}, unfit: {from: 0, means: Leave it.}}
)";
  const Graded sample = graded(rules,
                               "inspection: {rules: house}\n"
                               "safety: {numb: {left: no, right: {value: yes, note: since May}}}\n"
                               "found: {lace: hook and loop, dry: no}\n");
  const std::string json = json_report(sample.program, sample.inspection, sample.verdict, {});
  CHECK(at(json, "/findings/0/readings/0") ==
        R"({"side":"","value":"hook and loop","band":"hook and loop","credit":0.5})");
  CHECK(at(json, "/findings/1/readings/0") == R"({"side":"","value":"no","band":"no","credit":0})");
  CHECK(at(json, "/see_practitioner_first") == "true");
  CHECK(at(json, "/safety/0") ==
        R"({"name":"numb","question":"Numb","answer":"yes","referral":"See somebody.",)"
        R"("reason":"","sides":["right"],"notes":["since May"]})");
}

TEST_CASE("what a record says stays inside its strings") {
  const Graded sample = graded(one_rule(bands), one_record("9 mm", "12 mm"));
  Inspection hostile = sample.inspection;
  hostile.client = "\", \"grade\": \"sound\x1b</script>";
  const std::string json = json_report(sample.program, hostile, sample.verdict, {});
  CHECK(json.find(R"("client": "\", \"grade\": \"sound\u001b\u003c/script>")") !=
        std::string::npos);
}

}  // namespace
}  // namespace heelrule
