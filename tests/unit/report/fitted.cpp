#include "tests/unit/report/fitted.hpp"

#include <catch2/catch.hpp>
#include <utility>

#include "engine/fitting/visit_of_record.hpp"

namespace heelrule {
namespace {

constexpr const char* rules = R"(title: House
edition: first
sections: {fit: {title: Fit}}
safety: {numb: {ask: "Are the feet numb?", referral: See a practitioner.}}
traits:
  foot_length: {ask: Standing length, measure: mm, per: foot, doubt: 1 mm}
  foot_length_seated: {ask: Seated length, measure: mm, per: foot, doubt: 1 mm}
  foot_width: {ask: Width, measure: mm, per: foot, doubt: 1 mm}
  ball_girth: {ask: Girth, measure: mm, per: foot, doubt: 2 mm}
  insole_length: {ask: Inside, measure: mm, per: shoe, doubt: 1 mm}
  sock_marked: {ask: Sock, marked: sock range}
  sock_foot_length: {ask: In the sock, measure: mm, per: foot, doubt: 1 mm}
  cuff_mark: {ask: Cuff, scale: [groove, print, none], per: foot}
  child_age: {ask: Age, measure: years, per: client}
  toe_allowance: {ask: Space, derive: insole_length - foot_length}
rules:
  toe_allowance:
    section: fit
    weight: 1
    reads: toe_allowance
    bands:
      - {name: short, below: 5 mm, earns: 0}
      - {name: close, below: 10 mm, earns: 50 %}
      - {name: right, up to: 15 mm, earns: 100 %}
      - {name: long, earns: 0}
    because: Toes need room.
    source: common practice
grades: {sound: {from: 50, means: Keep it.}, unfit: {from: 0, means: Leave it.}}
cautions: {care: Mind the feet.}
)";

}  // namespace

Fitted fitted(const std::string& found, const std::string& numb) {
  Graded all =
      graded(rules, "inspection: {rules: house, date: 2026-10-03}\nsafety: {numb: " + numb +
                        "}\nfound:\n" + found);
  const auto visit = visit_of_record(all.program.rules, all.inspection);
  const auto window = toe_window(all.program.rules);
  REQUIRE(visit);
  REQUIRE(window);
  const std::vector<Visit> visits{*visit};
  Fitting found_fitting = fitting(visits, *window, visit->age.has_value());
  return {std::move(all), std::move(found_fitting)};
}

}  // namespace heelrule
