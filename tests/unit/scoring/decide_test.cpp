// What is said with a verdict: cautions, referrals and advice.
#include "engine/scoring/decide.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const std::string house = R"(title: House
sections: {fit: {title: Fit}}
safety: {numb: {ask: Numb, per: foot, referral: See somebody.}}
traits:
  gap: {ask: Gap, measure: mm, per: shoe}
  skin: {ask: Skin, scale: [open, red, whole], per: foot}
  grip: {ask: Grip, scale: [none, some, good]}
  rise: {ask: Rise, measure: mm}
  run: {ask: Run, measure: mm}
  steep: {ask: Steepness, derive: rise / run}
rules:
  gap:
    section: fit
    weight: 2
    reads: gap
    bands:
      - {name: short, below: 6 mm, earns: 0, caution: A short shoe hurts., advice: Go longer.}
      - {name: close, below: 10 mm, earns: 50 %, caution: Measure again.}
      - {name: right, earns: 100 %}
    because: x
    source: x
    advice: Try another pair.
  skin:
    section: fit
    weight: 10
    reads: skin
    levels:
      open: {earns: 0, referral: Open skin is for a practitioner.}
      red: {earns: 50 %, referral: Red skin is for a practitioner.}
      whole: 100 %
    because: x
    source: x
    caution: Look at the skin each day.
    advice: Take the pair off.
    despite_referral: yes
  grip:
    section: fit
    weight: 8
    must: {caps: low}
    reads: grip
    levels: {none: 0, some: 50 %, good: 100 %}
    because: x
    source: x
    advice: Change the sole.
  steep:
    section: fit
    weight: 4
    reads: steep
    bands: [{name: low, up to: 0.2, earns: 100 %}, {name: high, earns: 0}]
    because: x
    source: x
    advice: Lower the heel.
grades: {high: {from: 50, means: x}, low: {from: 0, means: x}}
)";

constexpr std::size_t gap = 0;
constexpr std::size_t skin = 1;
constexpr std::size_t grip = 2;
constexpr std::size_t steep = 3;

Verdict verdict(const std::string& safety, const std::string& found) {
  return graded(house, "inspection: {rules: house}\nsafety: " + safety + "\nfound: " + found + "\n")
      .verdict;
}

using All = std::vector<Spoken>;

// Gains of 24: gap 2, grip 4, skin none.
TEST_CASE("advice comes by what it would gain, most first") {
  const Verdict v =
      verdict("{numb: no}", "{gap: 4 mm, grip: some, skin: whole, rise: 5 mm, run: 20 mm}");
  CHECK(v.findings[gap].gain < v.findings[steep].gain);
  CHECK(v.advice ==
        All{{grip, std::nullopt}, {steep, std::nullopt}, {gap, std::nullopt}, {gap, 0}});
}

TEST_CASE("advice of a failed must comes first, whatever it would gain") {
  const Verdict v =
      verdict("{numb: no}", "{gap: 12 mm, grip: none, skin: whole, rise: 9 mm, run: 20 mm}");
  CHECK(v.advice == All{{grip, std::nullopt}, {steep, std::nullopt}});
  const Verdict light = graded(
                            R"(title: House
sections: {fit: {title: Fit}}
traits: {a: {ask: A, answer: yes or no}, b: {ask: B, answer: yes or no}}
rules:
  heavy: {section: fit, weight: 9, reads: a, levels: {no: 0, yes: 100 %}, because: x, source: x, advice: h}
  must: {section: fit, weight: 1, must: {caps: low}, reads: b, levels: {no: 0, yes: 100 %}, because: x,
         source: x, advice: m}
grades: {high: {from: 50, means: x}, low: {from: 0, means: x}}
)",
                            "inspection: {rules: house}\nfound: {a: no, b: no}\n")
                            .verdict;
  CHECK(light.advice == All{{1, std::nullopt}, {0, std::nullopt}});
}

TEST_CASE("a yes holds advice back, but for rules that say otherwise") {
  const Verdict v =
      verdict("{numb: {left: yes, right: no}}",
              "{gap: 4 mm, grip: some, skin: {left: whole, right: red}, rise: 1 mm, run: 20 mm}");
  CHECK(v.refers());
  CHECK(v.safety[0].yes);
  CHECK(v.safety[0].sides == std::vector{Side::left});
  CHECK(v.advice == All{{skin, std::nullopt}});
  CHECK(v.held_advice == All{{grip, std::nullopt}, {gap, std::nullopt}, {gap, 0}});
}

TEST_CASE("a referral of a rule holds advice back as a yes does") {
  const Verdict v =
      verdict("{numb: no}", "{gap: 4 mm, grip: good, skin: red, rise: 1 mm, run: 20 mm}");
  CHECK(v.referrals == All{{skin, 0}});
  CHECK(v.advice == All{{skin, std::nullopt}});
  CHECK(v.held_advice == All{{gap, std::nullopt}, {gap, 0}});
}

TEST_CASE("a referral counts also from the side that does not decide") {
  const Verdict v = verdict("{numb: no}", "{skin: {left: red, right: open}}");
  CHECK(v.findings[skin].status == Status::fail);
  CHECK(v.findings[skin].decisive == 1);
  CHECK(v.referrals == All{{skin, 0}, {skin, 1}});
}

TEST_CASE("two sides in one band are spoken of once") {
  const Verdict v = verdict("{numb: no}", "{gap: {left: 4 mm, right: 5 mm}}");
  CHECK(v.findings[gap].decisive == 0);
  CHECK(v.cautions == All{{gap, 0}});
}

TEST_CASE("a side that was seen refers and warns, though the other leaves the finding open") {
  const Verdict v = verdict("{numb: no}", "{skin: {left: red}, gap: {right: 7 mm}}");
  CHECK(v.findings[skin].status == Status::not_seen);
  CHECK(v.referrals == All{{skin, 0}});
  // The rule's own words too: with one side red it cannot pass in full any more.
  CHECK(v.cautions == All{{gap, 0}, {skin, std::nullopt}});
  CHECK(v.advice.empty());
}

TEST_CASE("a side that passes says nothing while the other is not seen") {
  const Verdict v = verdict("{numb: no}", "{skin: {left: whole}, gap: {right: 12 mm}}");
  CHECK(v.referrals.empty());
  CHECK(v.cautions.empty());
}

TEST_CASE("a formula without a value cannot be worked out, though nothing is missing") {
  const Verdict v = verdict("{numb: no}", "{rise: 5 mm, run: 0 mm}");
  const Finding& found = v.findings[steep];
  CHECK(found.status == Status::not_seen);
  CHECK(found.cannot_be_worked_out);
  CHECK(found.missing.empty());
  CHECK_FALSE(v.findings[grip].cannot_be_worked_out);
}

TEST_CASE("a derived trait is missing what its formula reads") {
  const Verdict v = verdict("{numb: no}", "{rise: 5 mm}");
  CHECK(v.findings[steep].missing.size() == 1);
  CHECK(v.findings[steep].missing[0].side == Side::none);
}

TEST_CASE("a safety question is answered by a yes on one side or a no on both") {
  const auto answer = [](const std::string& sides) {
    return verdict("{numb: {" + sides + "}}", "{}").safety[0];
  };
  CHECK(answer("left: yes").asked);
  CHECK(answer("left: yes").yes);
  CHECK_FALSE(answer("left: no").asked);
  CHECK_FALSE(answer("left: no").yes);
  CHECK(answer("left: no, right: no").asked);
  CHECK_FALSE(verdict("{}", "{}").safety[0].asked);
  CHECK(answer("left: yes, right: yes").sides == std::vector{Side::left, Side::right});
}

}  // namespace
}  // namespace heelrule
