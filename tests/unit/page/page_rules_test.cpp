#include "engine/page/page_rules.hpp"

#include <catch2/catch.hpp>

#include "engine/page/questions_json.hpp"
#include "engine/report/json_report.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/shipped/shipped.hpp"
#include "tests/unit/page/loaded.hpp"

namespace heelrule {
namespace {

TEST_CASE("a rule set of a page is the one that was loaded") {
  for (const std::string& name : shipped_rule_sets()) {
    INFO(name);
    const LoadedProgram loaded = loaded_shipped(name);
    const auto program = program_of_page(page_rules(name, loaded.tree));
    REQUIRE(program);
    CHECK(program->rules.name == name);
    CHECK(program->register_count == loaded.program.register_count);
    CHECK(questions_json(*program, {}) == questions_json(loaded.program, {}));
    const Inspection nothing;
    CHECK(json_report(*program, nothing, grade(*program, nothing), {}) ==
          json_report(loaded.program, nothing, grade(loaded.program, nothing), {}));
  }
}

TEST_CASE("a page says what is wrong with rules that it cannot run") {
  const auto problem = [](std::string_view line) {
    return program_of_page(line).problem().message;
  };
  CHECK(problem("") == "the file ends where a value is due");
  CHECK(problem("[]") == "this page holds no rules");
  CHECK(problem(R"({"name": "house"})") == "this page holds no rules");
  CHECK(problem(R"({"name": "house", "rules": {"titel": "House"}})") ==
        "a rule set needs `grades`");
}

}  // namespace
}  // namespace heelrule
