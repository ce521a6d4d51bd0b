#include "engine/report/amendment_words.hpp"

#include <catch2/catch.hpp>

#include "engine/report/place_words.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

RuleSet house() {
  return graded(one_rule("[{name: short, below: 5 mm, earns: 0}, {name: right, earns: 100 %}]"),
                one_record("1 mm", "1 mm"))
      .program.rules;
}

}  // namespace

TEST_CASE("an amendment is told with its question, what stood there, who, when and why") {
  Inspection inspection;
  inspection.amendments = {{"gap.right", "9 mm", "2026-10-04T08:12Z", "A-02", "misread"},
                           {"inspection.observer", "open", "2026-10-05T08:12Z", "A-03", ""}};
  CHECK(amendment_words(house(), inspection, {}) ==
        std::vector<std::string>{
            "Gap before the toe (right). It was: 9 mm. Changed by A-02 on 2026-10-04T08:12Z: "
            "misread.",
            "Recorded by. It was: open. Changed by A-03 on 2026-10-05T08:12Z."});
}

TEST_CASE("a place is called by its title, its question, or else its key") {
  CHECK(place_title(house(), "inspection.note", {}) == "Note");
  CHECK(place_title(house(), "gap", {}) == "Gap before the toe");
  CHECK(place_title(house(), "gone.left", {}) == "gone.left");
  CHECK(head_title("gap").empty());
}

}  // namespace heelrule
