#include "engine/recording/draft.hpp"

#include <catch2/catch.hpp>
#include <set>

#include "engine/reading/make_node.hpp"
#include "engine/recording/record_yaml.hpp"
#include "tests/shipped/shipped.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

Program house() {
  return graded(one_rule("[{name: short, below: 5 mm, earns: 0}, {name: right, earns: 100 %}]"),
                one_record("1 mm", "1 mm"))
      .program;
}

Node old_record() {
  Node record = map_node();
  add_entry(map_below(record, "inspection"), "rules", text_node("house"));
  add_entry(map_below(record, "inspection"), "client", text_node("C-014"));
  add_entry(map_below(map_below(record, "found"), "gap"), "both", text_node("9 mm"));
  return record;
}

}  // namespace

TEST_CASE("a draft has a field for each head item and each side of each trait") {
  const auto program = house();
  const Draft draft(program);
  std::vector<std::string> keys;
  for (const Field& field : draft.fields()) {
    keys.push_back(key_of(field, program.rules));
  }
  CHECK(keys == std::vector<std::string>{"inspection.date", "inspection.observer",
                                         "inspection.client", "inspection.shoe.label",
                                         "inspection.shoe.marked", "inspection.note", "gap.left",
                                         "gap.right"});
  CHECK(draft.find("gap.right") == 7U);
  CHECK_FALSE(draft.find("gap"));
}

TEST_CASE("no two fields of a shipped rule set have one key") {
  for (const std::string& name : shipped_rule_sets()) {
    const auto program = shipped_program(name);
    const Draft draft(program);
    std::set<std::string> keys;
    for (const Field& field : draft.fields()) {
      keys.insert(key_of(field, program.rules));
    }
    CHECK(keys.size() == draft.fields().size());
  }
}

TEST_CASE("what is open is left out of the record, and what is empty too") {
  const auto program = house();
  Draft draft(program);
  draft.fill(1, text_node(""));
  draft.fill(2, text_node("C-014"));
  draft.fill(7, text_node("9 mm"));
  CHECK(record_yaml(draft.record(std::nullopt)) ==
        "inspection:\n  rules: \"house\"\n  client: \"C-014\"\n\n"
        "found:\n  gap: {right: \"9 mm\"}\n");
}

TEST_CASE("one reading of both sides stands in the record once, until one side gets its own") {
  const auto program = house();
  Draft draft(program);
  draft.take_over(old_record());
  CHECK(draft.is_for_both(6));
  draft.fill(7, text_node("9 mm"));
  CHECK_FALSE(draft.is_changed());
  draft.fill_both(6, text_node("8 mm"));
  const Node record = draft.record(Amender{"A-02", "2026-11-27T10:12Z", ""});
  CHECK(record.find("found")->find("gap")->text == "8 mm");
  REQUIRE(record.find("amended")->items.size() == 1);
  CHECK(record.find("amended")->items[0].find("answer")->text == "gap");
  CHECK(record.find("amended")->items[0].find("was")->text == "9 mm");
  draft.fill(6, text_node("7 mm"));
  CHECK_FALSE(draft.is_for_both(7));
  CHECK(record_yaml(*draft.record(std::nullopt).find("found")) ==
        "gap:\n  left: \"7 mm\"\n  right: \"8 mm\"\n");
}

TEST_CASE("an amended record keeps what stood there, with when and by whom") {
  const auto program = house();
  Draft draft(program);
  draft.take_over(old_record());
  CHECK_FALSE(draft.is_changed());
  CHECK(draft.answer(6)->text == "9 mm");
  draft.fill(7, text_node("11 mm"));
  draft.fill(2, text_node("C-014"));
  draft.fill(0, text_node("2026-10-03"));
  CHECK(draft.is_changed());
  const Amender amender{"A-02", "2026-11-27T10:12Z", "misread"};
  const Node record = draft.record(amender);
  CHECK(
      record_yaml(record) ==
      "inspection:\n  rules: \"house\"\n  date: \"2026-10-03\"\n  client: \"C-014\"\n\n"
      "found:\n  gap: {left: \"9 mm\", right: \"11 mm\"}\n\n"
      "amended:\n"
      "  - {answer: \"inspection.date\", was: \"open\", when: \"2026-11-27T10:12Z\", by: \"A-02\", "
      "because: \"misread\"}\n"
      "  - {answer: \"gap.right\", was: \"9 mm\", when: \"2026-11-27T10:12Z\", by: \"A-02\", "
      "because: \"misread\"}\n");

  Draft later(program);
  later.take_over(record);
  later.fill(7, text_node("12 mm"));
  const Node twice = later.record(Amender{"A-03", "2026-11-28T08:00Z", ""});
  REQUIRE(twice.find("amended")->items.size() == 3);
  CHECK(twice.find("amended")->items[2].find("was")->text == "11 mm");
  CHECK(twice.find("amended")->items[2].find("because") == nullptr);
}

}  // namespace heelrule
