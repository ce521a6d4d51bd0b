#include "engine/report/finding_ruler.hpp"

#include <catch2/catch.hpp>

#include "engine/doubt/doubt.hpp"
#include "engine/report/value_words.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const std::string bands =
    "[{name: short, below: 6 mm, earns: 0}, {name: close, below: 10 mm, earns: 0 % .. 50 %},"
    " {name: right, up to: 15 mm, earns: 100 %}, {name: long, earns: 40 %}]";

std::optional<Ruler> ruler(const Graded& now, const Graded* before = nullptr) {
  std::optional<DoubtedFinding> earlier;
  std::optional<Doubt> earlier_doubt;
  if (before != nullptr) {
    earlier_doubt = doubt_of(before->program, before->inspection, before->verdict);
    earlier.emplace(DoubtedFinding{before->verdict.findings[0], &earlier_doubt->findings[0]});
  }
  const Doubt doubt = doubt_of(now.program, now.inspection, now.verdict);
  return finding_ruler(now.program, "a", "A",
                       DoubtedFinding{now.verdict.findings[0], &doubt.findings[0]}, earlier);
}

TEST_CASE("bands of a ruler are those of the rule, filled by what they earn") {
  const auto made = ruler(graded(one_rule(bands), one_record("8 mm", "12 mm")));
  REQUIRE(made);
  REQUIRE(made->bands.size() == 4);
  CHECK(made->bands[0].fill == BandFill::dense);
  CHECK(made->bands[1].fill == BandFill::sparse);
  CHECK(made->bands[2].fill == BandFill::open);
  CHECK(made->bands[3].fill == BandFill::sparse);
  CHECK(made->bands[1].cut == 10);
  CHECK(made->bands[1].cut_words == "10 mm");
  CHECK(made->bands[2].words == "right (10 mm to 15 mm)");
  CHECK(!made->bands[3].cut);
}

TEST_CASE("each side is a notch, and two that are alike are one") {
  const auto apart = ruler(graded(one_rule(bands), one_record("8 mm", "12 mm")));
  REQUIRE(apart->notches.size() == 2);
  CHECK(apart->notches[0].words == "left 8 mm");
  CHECK(apart->notches[1].value == 12);
  const auto alike = ruler(graded(one_rule(bands), one_record("8 mm", "8 mm")));
  REQUIRE(alike->notches.size() == 1);
  CHECK(alike->notches[0].words == "both 8 mm");
}

TEST_CASE("a notch is printed as the finding's own words are, and never on a cut that it misses") {
  const Graded sample = graded(one_rule(bands), one_record("9.96 mm", "9.96 mm"));
  const auto made = ruler(sample);
  CHECK(made->notches[0].words == "both 9.96 mm");
  CHECK(made->notches[0].words == readings_words(sample.program, sample.verdict.findings[0]));
}

TEST_CASE("an earlier reading is faint beside the new one") {
  const Graded before = graded(one_rule(bands), one_record("12 mm", "13 mm"));
  const auto made = ruler(graded(one_rule(bands), one_record("8 mm", "8 mm")), &before);
  REQUIRE(made->notches.size() == 3);
  CHECK(!made->notches[0].earlier);
  CHECK(made->notches[1].earlier);
  CHECK(made->notches[2].words == "right 13 mm");
}

TEST_CASE("the doubt of a reading that was taken several times is that of its mean") {
  // JCGM 100, 4.2.3: of 11, 12, 13 mm the mean is good to 1/sqrt(3) mm by scatter alone; annex G:
  // with two degrees of freedom that is worth 4.3027/1.9600 as much. A notch shows twice that.
  const Graded repeated = graded(one_rule(bands), one_record("[11, 12, 13 mm]", "12 mm"));
  const auto made = ruler(repeated);
  CHECK(made->notches[0].doubt == Approx(2 * 1.26745).margin(2e-5));
}

TEST_CASE("what is worked out is as doubtful as what it is worked out from") {
  // JCGM 100, 5.1.2: of a difference of two readings, good to 3 and 4 mm, sqrt(3² + 4²) = 5 mm.
  const auto made = ruler(graded(
      "title: House\nsections: {fit: {title: Fit}}\n"
      "traits:\n  inside: {ask: Inside, measure: mm, doubt: 3 mm}\n"
      "  foot: {ask: Foot, measure: mm, doubt: 4 mm}\n"
      "  gap: {ask: Gap, derive: inside - foot, shown: mm}\n"
      "rules: {gap: {section: fit, weight: 1, reads: gap, because: B., source: common practice,"
      " bands: [{name: short, below: 10 mm, earns: 0}, {name: right, earns: 100 %}]}}\n"
      "grades: {a: {from: 0, means: M.}}\n",
      "inspection: {rules: house}\nfound: {inside: 250 mm, foot: 240 mm}\n"));
  CHECK(made->notches[0].doubt == Approx(2 * 5));
}

TEST_CASE("readings that are taken as they stand are lines") {
  const Graded sample = graded(one_rule(bands), one_record("8 mm", "12 mm"));
  const auto made = finding_ruler(sample.program, "a", "A",
                                  DoubtedFinding{sample.verdict.findings[0], nullptr}, {});
  CHECK(made->notches[0].doubt == 0);
}

TEST_CASE("a trait in degrees is drawn in degrees") {
  const auto made = ruler(graded(
      "title: House\nsections: {fit: {title: Fit}}\n"
      "traits: {lean: {ask: Lean, measure: °}}\n"
      "rules: {lean: {section: fit, weight: 1, reads: lean, because: B., source: common practice,"
      " bands: [{name: upright, up to: 3°, earns: 100 %}, {name: leaning, earns: 0}]}}\n"
      "grades: {a: {from: 0, means: M.}}\n",
      "inspection: {rules: house}\nfound: {lean: 4°}\n"));
  CHECK(made->notches[0].words == "4°");
  CHECK(made->notches[0].value == Approx(4));
  CHECK(*made->bands[0].cut == Approx(3));
}

TEST_CASE("what was not read, and levels, have no ruler") {
  CHECK(!ruler(graded(one_rule(bands), "inspection: {rules: house}\n")));
  CHECK(
      !ruler(graded("title: House\nsections: {fit: {title: Fit}}\n"
                    "traits: {firm: {ask: Firm, answer: yes or no}}\n"
                    "rules: {firm: {section: fit, weight: 1, reads: firm, because: B.,"
                    " source: common practice, levels: {yes: 100 %, no: 0}}}\n"
                    "grades: {a: {from: 0, means: M.}}\n",
                    "inspection: {rules: house}\nfound: {firm: yes}\n")));
}

}  // namespace
}  // namespace heelrule
