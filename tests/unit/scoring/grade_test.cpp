// Whole records graded by hand.
#include "engine/scoring/grade.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

// Weights 12, 6 and 2; grades from 80 and 55.
const std::string house = R"(title: House
sections: {fit: {title: Fit}, build: {title: Build}}
traits:
  gap: {ask: Gap before the toe, measure: mm, per: shoe}
  counter: {ask: Heel counter, scale: [soft, medium, firm]}
  laced: {ask: Laced, answer: yes or no}
  pitch: {ask: Slope, measure: °}
rules:
  gap:
    section: fit
    weight: 12
    must: {caps: unfit}
    reads: gap
    bands:
      - {name: short, below: 6 mm, earns: 0}
      - {name: close, below: 10 mm, earns: 50 %}
      - {name: right, up to: 15 mm, earns: 100 %}
      - {name: roomy, up to: 20 mm, earns: 100 % .. 40 %}
      - {name: long, earns: 20 %}
    because: Toes need room.
    source: common practice
  counter:
    section: build
    weight: 6
    reads: counter
    levels: {soft: 0, medium: 60 %, firm: 100 %}
    because: Firm holds.
    source: common practice
  pitch:
    section: build
    weight: 2
    applies: laced
    reads: pitch
    bands:
      - {name: flat, up to: 4°, earns: 100 %}
      - {name: steep, earns: 0}
    because: Steep slides.
    source: common practice
grades:
  sound: {from: 80, means: Keep.}
  usable: {from: 55, means: Change.}
  unfit: {from: 0, means: Leave.}
)";

Verdict verdict(const std::string& found) {
  return graded(house, "inspection: {rules: house}\nfound: " + found + "\n").verdict;
}

constexpr std::size_t sound = 0;
constexpr std::size_t usable = 1;
constexpr std::size_t unfit = 2;

// 12 · 50 % + 6 · 60 % + 2 · 100 % = 11.6 of 20: 58 points.
TEST_CASE("a complete record earns the weighted mean of its credits") {
  const Verdict v =
      verdict("{gap: {left: 9 mm, right: 12 mm}, counter: medium, laced: yes, pitch: 4°}");
  CHECK(*v.score.points() == 58);
  CHECK(v.grade == usable);
  CHECK(v.uncapped == usable);
  CHECK(v.stands);
  CHECK(v.findings[0].status == Status::part);
  CHECK(v.findings[0].credit == 500'000);
  CHECK(v.findings[1].credit == 600'000);
  CHECK(v.findings[2].status == Status::pass);
}

TEST_CASE("each section adds up its own rules") {
  const Verdict v =
      verdict("{gap: {left: 9 mm, right: 12 mm}, counter: medium, laced: yes, pitch: 4°}");
  CHECK(*v.sections[0].points() == 50);
  CHECK(*v.sections[1].points() == 70);  // 6 · 60 % + 2 · 100 % of 8
}

// By what it would gain: 12 · 50 % of 20 is 30 points, 6 · 40 % of 20 is 12 points.
TEST_CASE("a finding knows what the score would gain if it passed in full") {
  const Verdict v =
      verdict("{gap: {left: 9 mm, right: 12 mm}, counter: medium, laced: yes, pitch: 4°}");
  CHECK(v.findings[0].gain == Approx(30));
  CHECK(v.findings[1].gain == Approx(12));
  CHECK(v.findings[2].gain == 0);
}

// 12 · 0 + 6 + 2 of 20 are 40 points; without the gap at all it would be unfit all the same,
// so 17.5 mm on one side is taken: 12 · 70 % + 6 + 2 = 16.4 of 20.
TEST_CASE("the worse side counts, also where it is the longer one on a straight line") {
  const Verdict v =
      verdict("{gap: {left: 12 mm, right: 17.5 mm}, counter: firm, laced: yes, pitch: 1°}");
  CHECK(v.findings[0].credit == 700'000);
  CHECK(v.findings[0].readings[v.findings[0].decisive].side == Side::right);
  CHECK(*v.score.points() == 82);
  CHECK(v.grade == sound);
}

TEST_CASE("a rule that does not apply has no weight") {
  const Verdict v = verdict("{gap: 12 mm, counter: medium, laced: no, pitch: 9°}");
  CHECK(v.findings[2].status == Status::does_not_apply);
  CHECK(v.score.weight == 18'000);
  CHECK(*v.score.points() == Approx(100 * 15.6 / 18));
  CHECK(v.stands);
}

// Seen: 12 + 3.6 of 18. Open: 2, so from 15.6 of 20 to 17.6 of 20.
TEST_CASE("where it is open whether a rule applies, its weight is open, whatever it read") {
  const Verdict v = verdict("{gap: 12 mm, counter: medium, pitch: 9°}");
  CHECK(v.findings[2].status == Status::not_seen);
  CHECK(v.findings[2].whether_it_applies_is_open);
  CHECK(v.findings[2].missing == std::vector<Missing>{{2, Side::none}});
  CHECK(v.score.open_weight == 2'000);
  CHECK(v.score.lowest_points() == 78);
  CHECK(v.score.highest_points() == 88);
  CHECK(v.lowest_grade == usable);
  CHECK(v.highest_grade == sound);
  CHECK_FALSE(v.stands);
  CHECK(v.would_settle == std::vector<Missing>{{2, Side::none}});
}

TEST_CASE("a failed must caps the grade, and the score stays as it is") {
  const Verdict v =
      verdict("{gap: {left: 5.9 mm, right: 12 mm}, counter: firm, laced: yes, pitch: 1°}");
  CHECK(*v.score.points() == 40);
  CHECK(v.grade == unfit);
  CHECK(v.findings[0].cap == unfit);
  CHECK(v.stands);
}

TEST_CASE("a must that earns a little does not cap") {
  const Verdict v =
      verdict("{gap: {left: 6 mm, right: 12 mm}, counter: firm, laced: yes, pitch: 1°}");
  CHECK(*v.score.points() == 70);
  CHECK(v.findings[0].cap == std::nullopt);
  CHECK(v.grade == usable);
}

TEST_CASE("one failing side decides the finding, though the other was not seen") {
  const Verdict v = verdict("{gap: {left: 5 mm}, counter: firm, laced: no}");
  CHECK(v.findings[0].status == Status::fail);
  CHECK(v.findings[0].missing.empty());
  CHECK(v.grade == unfit);
  CHECK(v.stands);
}

// Open: 12 of 18. From 6 of 18 to 18 of 18, and a must is open.
TEST_CASE("one side that passes leaves the finding open, and is no bound for it") {
  const Verdict v = verdict("{gap: {right: 9 mm}, counter: firm, laced: no}");
  CHECK(v.findings[0].status == Status::not_seen);
  CHECK(v.findings[0].missing == std::vector<Missing>{{0, Side::left}});
  REQUIRE(v.findings[0].readings.size() == 1);
  CHECK(v.findings[0].readings[0].side == Side::right);
  CHECK(*v.score.points() == 100);
  CHECK(v.score.lowest_points() == Approx(100 / 3.0));
  CHECK(v.score.highest_points() == 100);
  CHECK(v.lowest_grade == unfit);
  CHECK(v.highest_grade == sound);
}

TEST_CASE("a must that was not seen makes the grade provisional, though the score is sure") {
  const Verdict v = graded(R"(title: House
sections: {fit: {title: Fit}}
traits: {gap: {ask: Gap, measure: mm}, counter: {ask: Counter, answer: yes or no}}
rules:
  gap:
    {section: fit, weight: 0, must: {caps: low}, reads: gap, because: x, source: x,
     bands: [{name: short, below: 6 mm, earns: 0}, {name: right, earns: 100 %}]}
  counter:
    {section: fit, weight: 5, reads: counter, because: x, source: x, levels: {no: 0, yes: 100 %}}
grades: {high: {from: 50, means: x}, low: {from: 0, means: x}}
)",
                           "inspection: {rules: house}\nfound: {counter: no}\n")
                        .verdict;
  CHECK(v.grade == 1);
  CHECK(v.lowest_grade == 1);
  CHECK(v.highest_grade == 1);
  CHECK_FALSE(v.stands);
  CHECK(v.would_settle == std::vector<Missing>{{0, Side::none}});
}

TEST_CASE("what would settle a grade is listed with musts first, then by weight, each once") {
  const Verdict v = verdict("{}");
  CHECK_FALSE(v.grade);
  CHECK_FALSE(v.stands);
  CHECK(v.would_settle ==
        std::vector<Missing>{
            {0, Side::left}, {0, Side::right}, {1, Side::none}, {2, Side::none}, {3, Side::none}});
}

TEST_CASE("a score is held against a boundary exactly") {
  // 12 · 0.55 = 6.6 and 6 · 1: with the counter firm 12.6 of 18 are 70; the boundary is met by
  // 9 mm and firm without the pitch: 12 · 50 % + 6 = 12 of 18.
  const Verdict v = verdict("{gap: 9 mm, counter: firm, laced: no}");
  CHECK(*v.score.points() == Approx(200 / 3.0));
  CHECK(v.grade == usable);
}

// In binary fractions 264.4 - 254.4 is a little less than 10.
TEST_CASE("a comparison inside a formula counts as on paper") {
  const Verdict v =
      graded(R"(title: House
sections: {fit: {title: Fit}}
traits:
  insole: {ask: Insole, measure: mm}
  foot: {ask: Foot, measure: mm}
  enough: {ask: Enough, derive: insole - foot >= 10 mm}
  times: {ask: How often, derive: 1 mm / (insole - foot - 10 mm)}
rules:
  enough: {section: fit, weight: 1, reads: enough, because: x, source: x, levels: {no: 0, yes: 100 %}}
  times: {section: fit, weight: 1, reads: times, because: x, source: x,
          bands: [{name: few, below: 9, earns: 0}, {name: many, earns: 100 %}]}
grades: {high: {from: 50, means: x}, low: {from: 0, means: x}}
)",
             "inspection: {rules: house}\nfound: {insole: 264.4 mm, foot: 254.4 mm}\n")
          .verdict;
  CHECK(v.findings[0].status == Status::pass);
  CHECK(v.findings[1].cannot_be_worked_out);
}

TEST_CASE("of two sides with the same credit, the one farther from a better band decides") {
  const Verdict v = verdict("{gap: {left: 9 mm, right: 7 mm}, counter: firm, laced: no}");
  CHECK(v.findings[0].decisive == 1);
  CHECK_FALSE(v.findings[0].sides_alike);
}

TEST_CASE("sides of one value are alike") {
  const Verdict v = verdict("{gap: 9 mm, counter: firm, laced: no}");
  CHECK(v.findings[0].sides_alike);
  CHECK(v.findings[0].decisive == 0);
}

}  // namespace
}  // namespace heelrule
