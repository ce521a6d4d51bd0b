#include "engine/page/sound_answers.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/read_inspection.hpp"
#include "tests/shipped/shipped.hpp"
#include "tests/unit/page/loaded.hpp"

namespace heelrule {
namespace {

SoundAnswers answers(const std::string& record) {
  return sound_answers(tree_of(record), loaded_program(small_rules()).program.rules);
}

TEST_CASE("a slip on one side leaves the other, and is told of with its trait and side") {
  const SoundAnswers found =
      answers("inspection: {}\nfound: {foot_length: {left: 243 mm, right: 246 kg}}\n");
  REQUIRE(found.faults.size() == 1);
  CHECK(found.faults[0].name == "foot_length");
  CHECK(found.faults[0].side == Side::right);
  CHECK(found.faults[0].message == "`246 kg` is a mass, and a length is due here");
  CHECK_FALSE(found.faults[0].is_unusual);
  REQUIRE(found.inspection.observations.size() == 1);
  CHECK(found.inspection.observations[0].side == Side::left);
}

TEST_CASE("what would be taken if it were confirmed is unusual") {
  const SoundAnswers found = answers(
      "inspection: {}\n"
      "found: {foot_length: {left: {value: 400 mm, note: twice}, right: 4 mm}, insole_length: "
      "9}\n");
  REQUIRE(found.faults.size() == 3);
  CHECK(found.faults[0].is_unusual);
  CHECK(found.faults[1].is_unusual);
  CHECK_FALSE(found.faults[2].is_unusual);
  const SoundAnswers confirmed =
      answers("inspection: {}\nfound: {foot_length: {left: {value: 400 mm, confirmed: yes}}}\n");
  CHECK(confirmed.faults.empty());
  CHECK(confirmed.inspection.observations.size() == 1);
}

TEST_CASE("a slip in the head leaves the rest of the head") {
  const SoundAnswers found =
      answers("inspection: {date: 2026-13-01, client: C-014}\nfound: {heel_counter: firm}\n");
  REQUIRE(found.faults.size() == 1);
  CHECK(found.faults[0].name == "date");
  CHECK(found.faults[0].message == "`2026-13-01` is no date");
  CHECK(found.inspection.client == "C-014");
  CHECK(found.inspection.date.empty());
  CHECK(found.inspection.observations.size() == 2);
}

TEST_CASE("fibres that do not add up, safety questions and notes without a value are told of") {
  const SoundAnswers found = answers(
      "inspection: {}\n"
      "safety: {numb: perhaps}\n"
      "found: {fibres: {cotton: 80 %}, heel_counter: {left: {value: '', note: creased}, right: "
      "soft}}\n");
  REQUIRE(found.faults.size() == 3);
  CHECK(found.faults[0].name == "numb");
  CHECK(found.faults[1].name == "fibres");
  CHECK(found.faults[2].name == "heel_counter");
  CHECK(found.faults[2].side == Side::left);
  CHECK(found.inspection.observations.size() == 1);
}

TEST_CASE("a record without a fault is read as the command reads it") {
  const LoadedProgram everyday = loaded_shipped("everyday");
  const Node record =
      tree_of(content_of(std::string(HEELRULE_TEST_EXAMPLES) + "/office-worker/inspection.yaml"));
  Diagnostics diagnostics;
  const SoundAnswers found = sound_answers(record, everyday.program.rules);
  CHECK(found.faults.empty());
  CHECK(found.inspection == read_inspection(record, everyday.program.rules, diagnostics));
  CHECK(found.inspection.observations.size() > 60);
}

}  // namespace
}  // namespace heelrule
