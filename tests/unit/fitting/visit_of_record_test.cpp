#include "engine/fitting/visit_of_record.hpp"

#include <catch2/catch.hpp>

#include "engine/quantity/calendar_date.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

// A small rule set with these traits.
std::string rules_with(const std::string& traits) {
  return "title: House\n"
         "sections: {fit: {title: Fit}}\n"
         "traits:\n"
         "  sore: {ask: Sore, answer: yes or no}\n" +
         traits +
         "rules:\n"
         "  sore: {section: fit, weight: 1, reads: sore, levels: {yes: 0, no: 100 %},\n"
         "         because: It hurts., source: common practice}\n"
         "grades: {sound: {from: 0, means: Keep it.}}\n";
}

constexpr const char* length_trait =
    "  foot_length: {ask: Length, measure: mm, per: foot, doubt: 1 mm}\n";

Parsed<Visit> visit_of(const std::string& traits, const std::string& found) {
  const Graded all =
      graded(rules_with(traits), "inspection: {rules: house, date: 2026-10-03}\nfound:\n" + found);
  return visit_of_record(all.program.rules, all.inspection);
}

TEST_CASE("a visit holds what the record says of both feet") {
  const auto visit = visit_of(std::string(length_trait) +
                                  "  insole_length: {ask: Inside, measure: cm, per: shoe}\n"
                                  "  sock_marked: {ask: Sock, marked: sock range}\n"
                                  "  child_age: {ask: Age, measure: years, per: client}\n",
                              "  foot_length: {left: 178 mm, right: [179, 180, 179 mm]}\n"
                              "  insole_length: 19.2 cm\n"
                              "  sock_marked: EU 27-30\n"
                              "  child_age: 66 months\n");
  REQUIRE(visit);
  CHECK(visit->left.length == Measured{Millimetres(178), Millimetres(1)});
  CHECK(visit->right.length->doubt.value() == Approx(1.06051));
  CHECK(visit->right.inside_length == Measured{Millimetres(192), Millimetres(0)});
  CHECK(visit->age == 5.5);
  CHECK(visit->socks.size() == 1);
  CHECK_FALSE(visit->left.width);
  CHECK(visit->date == find_date("2026-10-03"));
}

TEST_CASE("the cuff grooves where its level says so") {
  const auto visit =
      visit_of(std::string(length_trait) +
                   "  cuff_mark: {ask: Cuff, scale: [groove, print, none], per: foot}\n",
               "  foot_length: 243 mm\n  cuff_mark: {left: groove, right: print}\n");
  REQUIRE(visit);
  CHECK(visit->left.cuff_grooves);
  CHECK_FALSE(visit->right.cuff_grooves);
}

TEST_CASE("a rule set that asks for no standing length cannot size") {
  CHECK(visit_of("", "  sore: no\n").problem() ==
        Problem{"`house` asks for no `foot_length`, by which sizes are found",
                "use a rule set that builds on `feet`"});
}

TEST_CASE("a record without a standing length cannot be sized") {
  CHECK(visit_of(length_trait, "  foot_length: not seen\n").problem() ==
        Problem{"no foot was measured standing", "record `foot_length`: shoes are bought by it"});
}

TEST_CASE("one foot is enough for a beginning") {
  CHECK(visit_of(length_trait, "  foot_length: {right: 243 mm}\n"));
}

TEST_CASE("a trait of a known name that is something else is a problem") {
  CHECK(visit_of("  foot_length: {ask: Length, measure: mm}\n", "  foot_length: 243 mm\n")
            .problem() == Problem{"`foot_length` of `house` is no length of each foot or shoe",
                                  "give the trait another name, for `size` knows this one"});
  CHECK(visit_of(std::string(length_trait) + "  child_age: {ask: Age, measure: count}\n",
                 "  foot_length: 243 mm\n")
            .problem()
            .message == "`child_age` of `house` is no time without sides");
}

TEST_CASE("a rule set is for children where it asks for their age") {
  RuleSet rules;
  CHECK_FALSE(is_for_children(rules));
  rules.traits.emplace_back().name = "child_age";
  CHECK(is_for_children(rules));
}

}  // namespace
}  // namespace heelrule
