#include "engine/marking/reference.hpp"

#include <catch2/catch.hpp>
#include <cmath>

#include "tests/unit/marking/marked.hpp"

namespace heelrule {
namespace {

const std::string bench = house(
    "  length: {ask: Length, measure: mm, doubt: 1 mm}\n"
    "  bare: {ask: Length without a doubt, measure: mm}\n"
    "  insole: {ask: Insole, scale: [broken, flat, springy]}\n"
    "  dry: {ask: Dry, answer: yes or no}\n",
    rule("length", "4",
         "bands: [{name: short, below: 250 mm, earns: 0}, {name: right, earns: 100 %}]") +
        rule("insole", "3", "levels: {broken: 0, flat: 50 %, springy: 100 %}"));

Marked panel(std::vector<std::string> references, const std::string& record) {
  for (std::string& one : references) {
    one = "found: " + one;
  }
  return marked(bench, "", references, "found: " + record);
}

TEST_CASE("a panel's measure is the robust mean, with an uncertainty of its own") {
  const Marked found =
      panel({"{length: 250 mm}", "{length: 251 mm}", "{length: 254 mm}"}, "{length: 250 mm}");
  const ReferenceItem& length = found.item("length");
  // Each within 1.5 deviations of the others: the plain mean, 1.134 · √(26/3/2) = 2.3606.
  CHECK(plain_number(*length.value) == Approx(251.666666667));
  CHECK(length.deviation == Approx(1.134 * std::sqrt(13.0 / 3)));
  CHECK(length.uncertainty == Approx(std::hypot(1, 1.25 * length.deviation / std::sqrt(3.0))));
  CHECK(length.asked == 3);
  CHECK(length.agreed == 3);
  CHECK(length.state == ReferenceState::seen);
  CHECK(found.of("length").likeness == Likeness::within);
}

TEST_CASE("a panel whose readings lie far apart is split, and holds nothing against anybody") {
  const Marked found = panel({"{length: 240 mm}", "{length: 260 mm}"}, "{length: 300 mm}");
  CHECK(found.item("length").state == ReferenceState::split);
  CHECK(found.of("length").likeness == Likeness::not_held);
  CHECK(!found.mark.points);
  CHECK(!found.mark.mark);
}

TEST_CASE("without any doubt the scatter of a panel of three gives the tolerance") {
  const std::vector<std::string> three{"{bare: 240 mm}", "{bare: 242 mm}", "{bare: 244 mm}"};
  const Marked near = panel(three, "{bare: 246 mm}");
  CHECK(near.of("bare").source == ToleranceSource::panel);
  CHECK(near.of("bare").tolerance == Approx(2 * near.item("bare").deviation));
  CHECK(near.of("bare").likeness == Likeness::within);
  CHECK(panel(three, "{bare: 247 mm}").of("bare").likeness == Likeness::off);
}

TEST_CASE("a panel names each observer once, though one code begins as another does") {
  const Program program = graded(bench, "inspection: {rules: house}\nfound: {}\n").program;
  std::vector<Inspection> all(3, recorded(bench, "found: {length: 250 mm}"));
  all[0].observer = "T-12";
  all[1].observer = "T-1";
  all[2].observer = "T-12";
  CHECK(make_reference(program, usual_marking_rules(program.rules), all).inspection.observer ==
        "T-12, T-1");
}

TEST_CASE("a panel's level is the one given most often, if more than half give it") {
  const Marked most =
      panel({"{insole: flat}", "{insole: springy}", "{insole: flat}"}, "{insole: flat}");
  CHECK(most.item("insole").agreed == 2);
  CHECK(most.of("insole").likeness == Likeness::right);
  const Marked split = panel({"{insole: springy}", "{insole: flat}"}, "{insole: broken}");
  CHECK(split.item("insole").state == ReferenceState::split);
  CHECK(plain_number(*split.item("insole").value) == 2);
  CHECK(split.of("insole").likeness == Likeness::not_held);
}

TEST_CASE("seen or not seen is for the panel to say, too") {
  const Marked unseen = panel({"{dry: not seen}", "{dry: not seen}", "{dry: yes}"}, "{dry: yes}");
  CHECK(unseen.of("dry").likeness == Likeness::invented);
  const Marked seen = panel({"{dry: not seen}", "{dry: yes}", "{dry: yes}"}, "{}");
  CHECK(seen.of("dry").likeness == Likeness::missed);
  const Marked even = panel({"{dry: not seen}", "{dry: yes}"}, "{dry: no}");
  CHECK(even.of("dry").likeness == Likeness::not_held);
  const Marked silent = panel({"{}", "{dry: yes}"}, "{dry: yes}");
  CHECK(silent.of("dry").likeness == Likeness::right);
}

TEST_CASE("a single reference is taken as it stands, repeats and all") {
  const Marked found = panel({"{length: [250, 252 mm]}"}, "{length: 251 mm}");
  CHECK(found.reference.inspection == recorded(bench, "found: {length: [250, 252 mm]}"));
  CHECK(found.of("length").likeness == Likeness::right);
  CHECK(found.item("length").uncertainty > 1);
}

}  // namespace
}  // namespace heelrule
