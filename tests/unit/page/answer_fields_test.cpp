#include "engine/page/answer_fields.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/page/loaded.hpp"

namespace heelrule {
namespace {

std::vector<AnswerFields> fields(const std::string& record) {
  return answer_fields(tree_of(record), loaded_program(small_rules()).program.rules);
}

AnswerFields field(const std::string& name, Side side, std::vector<std::string> texts) {
  AnswerFields one;
  one.name = name;
  one.side = side;
  one.texts = std::move(texts);
  return one;
}

TEST_CASE("a value that was given once for both sides comes once") {
  const auto both = field("heel_counter", Side::none, {"firm"});
  const auto right = field("heel_counter", Side::right, {"firm"});
  CHECK(fields("found: {heel_counter: firm}") == std::vector{both});
  CHECK(fields("found: {heel_counter: {both: firm}}") == std::vector{both});
  CHECK(fields("found: {heel_counter: {right: firm}}") == std::vector{right});
}

TEST_CASE("every part of an answer is kept as it was written") {
  auto length = field("foot_length", Side::left, {"2460", "247.0 mm"});
  length.note = "twice";
  length.confirmed = true;
  length.doubt = "2 mm";
  CHECK(fields("found: {foot_length: {left: {value: [2460, 247.0 mm], note: twice, confirmed: yes, "
               "doubt: 2 mm}}}") == std::vector{length});
  auto fibres = field("fibres", Side::none, {});
  fibres.fibres = {{"cotton", "80 %"}, {"elastane", "20%"}};
  CHECK(fields("found: {fibres: {cotton: 80 %, elastane: 20%}}") == std::vector{fibres});
}

TEST_CASE("what was not seen keeps its reason and its note") {
  auto plain = field("numb", Side::none, {});
  plain.not_seen = true;
  auto told = field("insole_length", Side::right, {});
  told.not_seen = true;
  told.reason = "glued in";
  told.note = "look again";
  CHECK(fields("safety: {numb: not seen}\n"
               "found: {insole_length: {right: {not seen: glued in, note: look again}}}") ==
        std::vector{plain, told});
}

}  // namespace
}  // namespace heelrule
