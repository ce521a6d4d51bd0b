#include "engine/page/page_engine.hpp"

#include <catch2/catch.hpp>

#include "engine/page/questions_json.hpp"
#include "tests/unit/page/loaded.hpp"

namespace heelrule {
namespace {

using Catch::Contains;

TEST_CASE("a page asks in bench order and in the reader's language") {
  PageEngine engine = page_engine(loaded_program(small_rules()));
  engine.speak(R"(["es-MX"])");
  const std::string asked = engine.questions();
  CHECK_THAT(asked, Contains(R"("title":"Casa")"));
  CHECK_THAT(asked, Contains(R"("languages":["en","es"],"language":"es")"));
  CHECK_THAT(
      asked,
      Contains(R"({"name":"foot_length","safety":false,"ask":"Longitud del pie","how":"Standing.",)"
               R"("form":"measure","sides":["left","right"],"units":["mm","cm","in"],)"
               R"("usual":"80 mm to 340 mm","levels":[]})"));
  CHECK_THAT(asked, Contains(R"({"name":"soft","meaning":"it gives way"})"));
  CHECK_THAT(asked, Contains(R"("grades":[{"name":"sound","from":50},{"name":"unfit","from":0}])"));
  CHECK(asked.find(R"("name":"numb")") < asked.find(R"("name":"foot_length")"));
  CHECK(asked.find(R"("name":"space")") == std::string::npos);
}

TEST_CASE("a page is told of faults, of what was worked out, and of what would settle the grade") {
  const PageEngine engine = page_engine(loaded_program(small_rules()));
  const std::string answers = engine.answers(
      R"({"inspection": {}, "found": {"foot_length": {"left": "243 mm", "right": "9 mm"},
          "insole_length": "255 mm"}})");
  CHECK_THAT(
      answers,
      Contains(R"({"faults":[{"name":"foot_length","side":"right","message":"`9 mm` is outside)"));
  CHECK_THAT(
      answers,
      Contains(
          R"("derived":[{"name":"space","ask":"Space before the toes","side":"left","value":"12 mm"}])"));
  CHECK_THAT(answers, Contains(R"("settle":[{"name":"foot_length")"));
  CHECK_THAT(answers, Contains(R"("sizes":[],"refers":false})"));
  CHECK_THAT(engine.answers(R"({"inspection": {}, "safety": {"numb": "yes"}})"),
             Contains(R"("refers":true)"));
}

TEST_CASE("sizes are those of this visit") {
  const PageEngine engine = page_engine(loaded_shipped("everyday"));
  CHECK_THAT(engine.answers(R"({"inspection": {"date": "2026-10-03"},
                 "found": {"foot_length": {"left": "243 mm", "right": "246 mm"}}})"),
             Contains("An inside length of 256 to 261 mm"));
}

TEST_CASE("a file is written with an indent and read back into fields") {
  const PageEngine engine = page_engine(loaded_program(small_rules()));
  const std::string file = engine.file(
      R"({"inspection":{"client":"C-014"},"found":{"heel_counter":{"left":"firm"}},"amended":[]})");
  CHECK(file == R"({
  "inspection": {
    "client": "C-014"
  },
  "found": {
    "heel_counter": {
      "left": "firm"
    }
  },
  "amended": []
}
)");
  CHECK_THAT(
      engine.opened(
          R"({"inspection": {"client": "C-014"}, "found": {"heel_counter": {"left": "firm"}}})"),
      Contains(
          R"("answers":[{"name":"heel_counter","side":"left","texts":["firm"],"fibres":[],)"
          R"("not_seen":false,"reason":"","note":"","confirmed":false,"doubt":""}],"other":{})"));
  CHECK(
      engine.opened("{\"inspection\": {},\n \"found\": {\"heel_counter\": \"frim\"}}") ==
      R"({"errors":[{"line":2,"column":29,"message":"`heel_counter` has no level `frim`","hint":"did you mean `firm`?"}]})");
}

TEST_CASE("a text that is no record is an empty one") {
  const PageEngine engine = page_engine(loaded_program(small_rules()));
  CHECK(engine.verdict("[") == engine.verdict("{}"));
  CHECK_THAT(engine.verdict(""), Contains(R"("stands": false)"));
}

}  // namespace
}  // namespace heelrule
