#include "engine/recording/typed_answer.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/make_node.hpp"
#include "engine/reading/read_value.hpp"
#include "engine/recording/record_yaml.hpp"
#include "tests/shipped/shipped.hpp"

namespace heelrule {
namespace {

const Trait& trait(const char* name) {
  static const Program program = shipped_program("everyday");
  const auto index = program.rules.find_trait(name);
  REQUIRE(index);
  return program.rules.traits[*index];
}

// What stands in the file then.
std::string typed(const char* name, const char* line) {
  const auto answer = typed_answer(trait(name), line);
  INFO(answer.problem().message);
  REQUIRE(answer);
  Node record = map_node();
  add_entry(map_below(record, "found"), "a", *answer);
  const std::string text = record_yaml(record);
  const std::string before = "found:\n  a: ";
  REQUIRE(text.starts_with(before));
  return text.substr(before.size(), text.size() - before.size() - 1);
}

Problem refused(const char* name, const char* line) {
  const auto answer = typed_answer(trait(name), line);
  CHECK_FALSE(answer);
  return answer.problem();
}

Value value(const char* name, const char* line) {
  const auto answer = typed_answer(trait(name), line);
  REQUIRE(answer);
  Diagnostics diagnostics;
  return read_value(trait(name), *answer, {}, diagnostics)->value;
}

}  // namespace

TEST_CASE("an answer stands in the record as it was typed") {
  CHECK(typed("foot_length", "243 mm") == "\"243 mm\"");
  CHECK(typed("foot_length", "  9.6 in ") == "\"9.6 in\"");
  CHECK(typed("numb_feet", "no") == "\"no\"");
  CHECK(typed("foot_length", "not seen") == "\"not seen\"");
  CHECK(typed("shoe_marked", "EU 39.5") == "\"EU 39.5\"");
}

TEST_CASE("words may be cut short where only one begins so") {
  CHECK(typed("heel_counter", "fi") == "\"firm\"");
  CHECK(typed("numb_feet", "y") == "\"yes\"");
  CHECK(refused("heel_counter", "x").message == "`heel_counter` has no level `x`");
  CHECK(refused("marks_after_trial", "").message.find("has no level ``") != std::string::npos);
}

TEST_CASE("repeats are parted by a comma and a blank, or by a semicolon") {
  CHECK(typed("foot_length", "246, 247, 246 mm") == "[\"246\", \"247\", \"246 mm\"]");
  CHECK(typed("foot_length", "246; 247 mm") == "[\"246\", \"247 mm\"]");
  const auto readings = std::get<Readings>(value("foot_length", "24.6, 24.7 cm"));
  CHECK(readings.stored == std::vector<double>{246, 247});
}

// A decimal comma must not make two readings of one.
TEST_CASE("a decimal comma is refused and not taken for two readings") {
  CHECK_FALSE(refused("foot_length", "24,5 cm").hint.empty());
}

TEST_CASE("a value may have a note, its own doubt, and a word that it is true") {
  CHECK(typed("heel_counter", "firm # creased, left only") ==
        "{value: \"firm\", note: \"creased, left only\"}");
  CHECK(typed("foot_length", "243 mm ± 2 mm") == "{value: \"243 mm\", doubt: \"2 mm\"}");
  CHECK(typed("foot_length", "243 mm +- 2 mm # by tape") ==
        "{value: \"243 mm\", doubt: \"2 mm\", note: \"by tape\"}");
  CHECK(std::get<Readings>(value("foot_length", "350 mm !")).confirmed);
}

TEST_CASE("a reading out of range is refused with what to type if it is true") {
  const Problem problem = refused("foot_length", "350 mm");
  CHECK(problem.message ==
        "`350 mm` is outside what is plausible for `foot_length`: 80 mm to 340 mm");
  CHECK(problem.hint == "check the value and its unit; if it is true, write `350 mm !`");
}

TEST_CASE("what a file refuses is refused in the same words") {
  CHECK_FALSE(refused("foot_length", "243").message.empty());
  CHECK(refused("foot_length", "243 mn").hint == "did you mean `mm`?");
  CHECK(refused("numb_feet", "maybe").message == "`maybe` is neither yes nor no");
  CHECK(refused("foot_length", "243 mm ± 1°").message ==
        "`1°` is an angle, and a length is due here");
  CHECK(refused("foot_length", "1\x1b[2J").message == "this holds the control character U+001B");
  CHECK(refused("foot_length", "1\tmm").message == "this holds a tab");
  CHECK(refused("foot_length", std::string(5000, '1').c_str()).message ==
        "an answer has 4096 bytes at most, and this has 5000");
}

TEST_CASE("what belongs to a measure is refused of everything else") {
  CHECK(refused("heel_counter", "firm !").message == "`!` belongs to a measure");
  CHECK(refused("numb_feet", "no ± 1 mm").message == "`±` belongs to a measure");
}

TEST_CASE("fibres are typed as a label has them, share before or after the name") {
  CHECK(std::get<FibreContent>(value("sock_fibres", "cotton 80 %, elastane 20 %")) ==
        std::get<FibreContent>(value("sock_fibres", "80 % cotton; 20 % elastane")));
  CHECK(refused("sock_fibres", "cotton 80 %, elastane 3 %").message ==
        "the fibres add up to 83 %, and 100 % is due");
}

TEST_CASE("not seen has a reason or none") {
  CHECK(not_seen_answer("")->text == "not seen");
  CHECK(not_seen_answer("sole was wet")->find("not seen")->text == "sole was wet");
  CHECK_FALSE(not_seen_answer("a\x01"));
}

}  // namespace heelrule
