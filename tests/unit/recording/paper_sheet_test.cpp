#include "engine/recording/paper_sheet.hpp"

#include <catch2/catch.hpp>

#include "engine/drawing/markup.hpp"
#include "engine/recording/bench_order.hpp"
#include "engine/recording/question.hpp"
#include "tests/shipped/shipped.hpp"
#include "tests/unit/count.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {

TEST_CASE("every question of every shipped rule set has its boxes, lines and rulers on paper") {
  for (const std::string& name : shipped_rule_sets()) {
    CAPTURE(name);
    const auto program = shipped_program(name);
    const std::string page = paper_sheet(program, {});
    std::size_t boxes = 0;
    std::size_t rulers = 0;
    for (const BenchSection& section : bench_order(program)) {
      for (const std::size_t trait : section.traits) {
        const Question asked = question(program.rules, trait);
        const std::size_t sides = asked.sided() ? 2 : 1;
        boxes += sides * (asked.form == AnswerForm::yes_or_no ? 2 : asked.levels.size());
        rulers += asked.plausible ? 1 : 0;
        CHECK(page.find(markup_text(asked.ask.in({}))) != std::string::npos);
        CHECK(page.find(markup_text(asked.how.in({}))) != std::string::npos);
      }
    }
    CHECK(count(page, "class=\"box\"") == boxes);
    CHECK(count(page, "class=\"picture blank-ruler\"") == rulers);
    CHECK(count(page, "<script") == 0);
  }
}

TEST_CASE("words of a rule set stay words on paper") {
  std::string rules =
      one_rule("[{name: short, below: 5 mm, earns: 0}, {name: right, earns: 100 %}]");
  rules.replace(rules.find("Gap before the toe"), 18, "<b>Gap</b> & toe");
  const std::string page = paper_sheet(graded(rules, one_record("1 mm", "1 mm")).program, {});
  CHECK(page.find("<b>Gap</b>") == std::string::npos);
  CHECK(page.find("&lt;b&gt;Gap&lt;/b&gt; &amp; toe") != std::string::npos);
}

}  // namespace heelrule
