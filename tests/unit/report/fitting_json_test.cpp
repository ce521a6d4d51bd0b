#include "engine/report/fitting_json.hpp"

#include <simdjson.h>

#include <catch2/catch.hpp>

#include "tests/unit/report/fitted.hpp"

namespace heelrule {
namespace {

std::string json_of(const std::string& found, const std::string& numb = "no") {
  const Fitted sample = fitted(found, numb);
  return fitting_json(sample.graded.program, sample.graded.inspection, sample.graded.verdict,
                      sample.fitting, {});
}

// The value at a path such as `/ask/sizes/0/size`, as JSON.
std::string at(const std::string& json, const std::string& path) {
  simdjson::dom::parser parser;
  const simdjson::dom::element found = parser.parse(json).at_pointer(path);
  return simdjson::minify(found);
}

constexpr const char* feet = "  foot_length: {left: 243 mm, right: 246 mm}\n";

TEST_CASE("a fitting names its format and version") {
  const std::string json = json_of(feet);
  CHECK(at(json, "/format") == "\"heelrule fitting\"");
  CHECK(at(json, "/version") == "1");
  CHECK(json.ends_with("\n}\n"));
}

TEST_CASE("lengths are in mm, with one standard uncertainty") {
  CHECK(at(json_of(feet), "/feet/left/standing") == "{\"mm\":243,\"doubt\":1}");
  CHECK(at(json_of(feet), "/feet/left/seated") == "null");
}

TEST_CASE("what to ask for stands as numbers and as marked sizes") {
  const std::string json = json_of(feet);
  CHECK(at(json, "/ask/inside_least") == "256");
  CHECK(at(json, "/ask/sizes/1/size") == "\"EU 39\"");
  CHECK(at(json, "/ask/smaller_foot/remedy") == "\"one pair\"");
  CHECK(at(json, "/growth") == "null");
}

TEST_CASE("advice that is held back is null") {
  const std::string json = json_of(std::string(feet) + "  sock_marked: 24-26 cm\n", "yes");
  CHECK(at(json, "/see_practitioner_first") == "true");
  CHECK(at(json, "/ask") == "null");
  CHECK(at(json, "/socks/choose") == "null");
  CHECK(json.find("EU 39") == std::string::npos);
}

TEST_CASE("days of a child's pair stand as days and as dates") {
  const std::string json =
      json_of("  foot_length: {left: 178 mm, right: 179 mm}\n  child_age: 4 years\n");
  CHECK(at(json, "/growth/new_pair/expected") == "{\"days\":214,\"date\":\"2027-05-05\"}");
  CHECK(at(json, "/growth/own_mm_a_month") == "null");
  CHECK(at(json, "/growth/present_pair") == "null");
}

}  // namespace
}  // namespace heelrule
