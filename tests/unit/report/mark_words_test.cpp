#include "engine/report/mark_words.hpp"

#include <catch2/catch.hpp>

#include "engine/report/fallback_order.hpp"
#include "tests/unit/marking/marked.hpp"

namespace heelrule {
namespace {

const std::string bench = house(
    "  heel: {ask: Heel, how: Press it., scale: {soft: it folds, medium: it gives, firm: it "
    "stays}, "
    "per: shoe}\n"
    "  length: {ask: Length, measure: mm, doubt: 1 mm}\n",
    rule("heel", "3", "levels: {soft: 0, medium: 50 %, firm: 100 %}"));

// A mark with its story; the story points into it.
struct Told {
  Marked marked;
  std::vector<std::string> languages;

  MarkStory story() const {
    return {marked.program, marked.marking, marked.reference,
            marked.record,  marked.mark,    languages};
  }
};

Told told(const std::vector<std::string>& references, const std::string& record) {
  Marked found = marked(bench, "", references, record);
  std::vector<std::string> languages = fallback_order({}, found.program.rules);
  return {std::move(found), std::move(languages)};
}

std::vector<std::string> printed(std::vector<double> shares) {
  Attribution attribution;
  for (const double share : shares) {
    attribution.record_points += share;
    attribution.shares.push_back({{0}, std::nullopt, share});
  }
  return share_points(attribution);
}

TEST_CASE("printed shares add up to the printed difference") {
  CHECK(printed({10.0 / 3, 10.0 / 3, 10.0 / 3}) ==
        std::vector<std::string>{"+3.34", "+3.33", "+3.33"});
  CHECK(printed({-2.006, 1.003, 0.003}) == std::vector<std::string>{"−2", "+1", "0"});
  CHECK(printed({}).empty());
}

TEST_CASE("what is the same on both sides is said once, and the rest by its side") {
  const Told same = told({"found: {heel: medium}"}, "found: {heel: firm}");
  const auto items = taught_items(same.story(), is_fault);
  REQUIRE(items.size() == 1);
  CHECK(items[0].title == "Heel (both sides)");
  CHECK(items[0].how == "Press it.");
  CHECK(
      items[0].says ==
      "You recorded firm; the reference says medium: yours is 1 level higher, which earns 50 % of "
      "the credit. `medium` means: it gives.");
  const Told differs = told({"found: {heel: medium}"}, "found: {heel: {left: firm, right: soft}}");
  CHECK(taught_items(differs.story(), is_fault).size() == 2);
}

TEST_CASE("what was missed and what was invented is taught in its own words") {
  const Told missed = told({"found: {heel: firm}"}, "found: {heel: {not seen: dark}}");
  CHECK(taught_items(missed.story(), is_fault).at(0).says ==
        "You did not record this (“dark”). The reference says firm. `firm` means: it stays.");
  const Told invented = told({"found: {heel: {not seen: padded}}"}, "found: {heel: firm}");
  CHECK(taught_items(invented.story(), is_fault).at(0).says ==
        "You recorded firm; the reference says that it is not to be seen (“padded”). Write `not "
        "seen` where you did not see it yourself.");
}

TEST_CASE("a panel says how far it agrees") {
  const Told found =
      told({"found: {heel: medium, length: 240 mm}", "found: {heel: medium, length: 242 mm}"},
           "found: {heel: soft, length: 248 mm}");
  const MarkStory story = found.story();
  CHECK(panel_words(story, found.marked.item("heel", Side::left)) == "2 of 2 say so");
  CHECK(panel_words(story, found.marked.item("length")) ==
        "2 of 2 within tolerance, spread 1.6 mm");
  CHECK(reference_words(found.marked.reference) == "panel of 2");
}

TEST_CASE("what moved the score and is no fault is said to be none") {
  const Told fault = told({"found: {heel: medium}"}, "found: {heel: firm}");
  CHECK(share_title(fault.story(), fault.marked.mark.attribution.shares.at(0)) == "Heel");
  const Told silent = told({"found: {}"}, "found: {heel: firm}");
  CHECK(share_title(silent.story(), silent.marked.mark.attribution.shares.at(0)) ==
        "Heel (not counted)");
}

TEST_CASE("printed points never reach a mark that was not reached") {
  Told found = told({"found: {heel: medium}"}, "found: {heel: firm}");
  found.marked.mark.points = 84.96;
  CHECK(mark_points_words(found.story()) == "84.9");
  found.marked.mark.points = std::nullopt;
  CHECK(mark_points_words(found.story()) == "–");
}

}  // namespace
}  // namespace heelrule
