#include "engine/marking/mark.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/marking/marked.hpp"

namespace heelrule {
namespace {

const std::string bench =
    "safety:\n  numb: {ask: \"Numb?\", per: foot, referral: See a practitioner.}\n" +
    house(
        "  foot: {ask: Foot, measure: mm, doubt: 1 mm}\n"
        "  shoe: {ask: Shoe, measure: mm, doubt: 1 mm}\n"
        "  space: {ask: Space, derive: shoe - foot}\n"
        "  seam: {ask: Seam, scale: [on broken skin, nowhere]}\n"
        "  heel: {ask: Heel, scale: [soft, firm]}\n",
        rule("space", "4",
             "bands: [{name: short, below: 6 mm, earns: 0}, {name: right, earns: 100 %}]",
             ", must: {caps: unfit}") +
            rule("seam", "2",
                 "levels: {on broken skin: {earns: 0, referral: Show the skin.}, nowhere: 100 %}") +
            rule("heel", "4", "levels: {soft: 0, firm: 100 %}"));

const std::string sound =
    "safety: {numb: no}\nfound: {foot: 240 mm, shoe: 250 mm, seam: nowhere, heel: firm}";

Marked mark_of(const std::string& reference, const std::string& record,
               const std::string& marking = "") {
  return marked(bench, marking, {reference}, record);
}

TEST_CASE("the same record earns all, with the best mark") {
  const Marked found = mark_of(sound, sound);
  CHECK(found.mark.points == 100.0);
  CHECK(found.mark.mark == 0U);
  CHECK(found.mark.critical.faults.empty());
  CHECK(found.mark.count(Likeness::right) == 6);
}

TEST_CASE("a must that the record passes over, and one that it fails wrongly, cap the mark") {
  const std::string short_shoe =
      "safety: {numb: no}\nfound: {foot: 240 mm, shoe: 243 mm, seam: nowhere, heel: firm}";
  const Marked passed_over = mark_of(short_shoe, sound);
  REQUIRE(passed_over.mark.critical.faults.size() == 1);
  CHECK(passed_over.mark.critical.faults[0] ==
        CriticalFault{CriticalKind::must_passed_over, 0, 2U});
  const Marked failed = mark_of(sound, short_shoe);
  REQUIRE(failed.mark.critical.faults.size() == 1);
  CHECK(failed.mark.critical.faults[0].kind == CriticalKind::must_failed);
  CHECK(failed.mark.mark >= 2U);
}

TEST_CASE("a must on the edge of a band is held against nobody whose readings are right") {
  const std::string edge =
      "safety: {numb: no}\nfound: {foot: 240 mm, shoe: 246 mm, seam: nowhere, heel: firm}";
  const std::string just_short =
      "safety: {numb: no}\nfound: {foot: 240 mm, shoe: 245 mm, seam: nowhere, heel: firm}";
  const Marked found = mark_of(edge, just_short);
  CHECK(found.mark.critical.faults.empty());
  REQUIRE(found.mark.critical.on_the_edge.size() == 1);
  CHECK(found.mark.critical.on_the_edge[0].kind == CriticalKind::must_failed);
  CHECK(found.mark.mark == 0U);
}

TEST_CASE(
    "a must that could not be judged for want of a reading is missed, and no wrong judgement") {
  const Marked found = mark_of(sound, "safety: {numb: no}\nfound: {foot: 240 mm, seam: nowhere}");
  CHECK(found.mark.critical.faults.empty());
  CHECK(found.of("shoe").likeness == Likeness::missed);
}

TEST_CASE("a safety question that is left out, on one side alone too, or denied") {
  const auto critical = [](const std::string& reference, const std::string& record) {
    const std::string found = "\nfound: {heel: firm}";
    return mark_of(reference + found, record + found).mark.critical.faults;
  };
  CHECK(critical("safety: {numb: no}", "safety: {}").at(0).kind == CriticalKind::safety_missed);
  CHECK(critical("safety: {numb: no}", "safety: {numb: {left: no}}").at(0).kind ==
        CriticalKind::safety_missed);
  CHECK(critical("safety: {numb: {left: yes, right: no}}", "safety: {numb: no}").at(0) ==
        CriticalFault{CriticalKind::safety_denied, 0, 3U});
  CHECK(critical("safety: {numb: no}", "safety: {numb: yes}").empty());
  CHECK(critical("safety: {}", "safety: {numb: no}").empty());
}

TEST_CASE("a referral that the record hides is critical") {
  const Marked found = mark_of(
      "safety: {numb: no}\nfound: {foot: 240 mm, shoe: 250 mm, seam: on broken skin, heel: firm}",
      sound);
  REQUIRE(found.mark.critical.faults.size() == 1);
  CHECK(found.mark.critical.faults[0] == CriticalFault{CriticalKind::referral_missed, 1, 3U});
  CHECK(found.mark.mark == 3U);
  CHECK(found.mark.uncapped != found.mark.mark);
}

TEST_CASE("the trainer's caps count, and `none` caps nothing") {
  const std::string marking =
      "marks: {good: {from: 60}, fair: {from: 30}, poor: {from: 0}}\ncritical: {referral: fair, "
      "safety: none}";
  const std::string reference =
      "safety: {numb: yes}\nfound: {foot: 240 mm, shoe: 250 mm, seam: on broken skin, heel: firm}";
  const Marked found = mark_of(reference, sound, marking);
  REQUIRE(found.mark.critical.faults.size() == 2);
  CHECK(!found.mark.critical.faults[0].cap);
  CHECK(found.mark.critical.faults[1].cap == 1U);
  CHECK(found.mark.uncapped == 0U);
  CHECK(found.mark.mark == 1U);
}

TEST_CASE("a mark begins at its boundary") {
  const auto mark = [](const std::string& from) {
    return mark_of("found: {seam: nowhere, heel: firm}", "found: {seam: nowhere, heel: soft}",
                   "weights: {seam: 7, heel: 3}\nlevel_off: 100 %\nmarks: {good: {from: " + from +
                       "}, poor: {from: 0}}")
        .mark.mark;
  };
  CHECK(mark("70") == 0U);
  CHECK(mark("70.1") == 1U);
}

}  // namespace
}  // namespace heelrule
