// Pass marks against worked examples; the sources stand in tests/data/agreement_statistics.json. No
// published raw data of these methods were found: one example reads a line through data of Anscombe
// 1973, the others were constructed.
#include "engine/agreement/pass_mark.hpp"

#include <catch2/catch.hpp>

#include "tests/published/statistics.hpp"

namespace heelrule {
namespace {

Approx near(double value) { return Approx(value).epsilon(0).margin(statistics_tolerance); }

std::vector<RatedMark> rated_marks(const WorkedExample& example) {
  const std::vector<double> ratings = example.numbers("/data/global");
  const std::vector<double> scores = example.numbers("/data/score");
  std::vector<RatedMark> marks;
  for (std::size_t i = 0; i < ratings.size(); ++i) {
    marks.push_back({ratings[i], scores[i]});
  }
  return marks;
}

TEST_CASE("borderline regression reads the line where the examples do") {
  for (const char* id : {"regression_anscombe_as_brm", "brm_constructed"}) {
    CAPTURE(id);
    const WorkedExample example(id);
    const BorderlineRegression found =
        borderline_regression(rated_marks(example), example.number("/params/borderline_grade"));
    CHECK(found.slope == near(example.number("/expected/slope")));
    CHECK(found.at_zero == near(example.number("/expected/intercept")));
    CHECK(found.explained == near(example.number("/expected/r2")));
    CHECK(found.cut.value == near(example.number("/expected/cut_score")));
    CHECK(found.cut.standard_error == near(example.number("/expected/se_cut_mean_line")));
    if (example.has("/expected/rmse_resid")) {
      CHECK(found.deviation == near(example.number("/expected/rmse_resid")));
    }
  }
}

TEST_CASE("the borderline group has the mean and the median of the example") {
  const WorkedExample example("brm_constructed");
  std::vector<double> marks;
  for (const RatedMark& one : rated_marks(example)) {
    if (one.rating == example.number("/params/borderline_grade")) {
      marks.push_back(one.mark);
    }
  }
  const BorderlineGroup found = borderline_group(marks);
  CHECK(found.students == example.number("/expected/n_borderline"));
  CHECK(found.mean.value == near(example.number("/expected/borderline_group_mean")));
  CHECK(found.median == near(example.number("/expected/borderline_group_median")));
}

TEST_CASE("Angoff's judgements come to the cut of the example") {
  const WorkedExample example("angoff_constructed");
  const Angoff found = angoff(example.ratings("/data/judges_by_items"));
  const std::vector<double> judges = example.numbers("/expected/judge_cut");
  for (std::size_t i = 0; i < judges.size(); ++i) {
    CHECK(found.judge_cuts[i] == near(judges[i]));
  }
  const std::vector<double> tasks = example.numbers("/expected/item_mean");
  for (std::size_t i = 0; i < tasks.size(); ++i) {
    CHECK(found.task_means[i] == near(tasks[i]));
  }
  CHECK(found.cut.value == near(example.number("/expected/cut_raw")));
  CHECK(100 * found.share == near(example.number("/expected/cut_percent")));
  CHECK(found.deviation == near(example.number("/expected/sd_judges")));
  CHECK(found.cut.standard_error == near(example.number("/expected/se_cut")));
  const std::vector<double> interval = example.numbers("/expected/ci");
  CHECK(found.cut.interval.low == near(interval[0]));
  CHECK(found.cut.interval.high == near(interval[1]));
}

TEST_CASE("Hofstee's curve and where it meets what is acceptable are those of the example") {
  const WorkedExample example("hofstee_constructed");
  const AcceptablePass acceptable{
      example.number("/params/min_cut"), example.number("/params/max_cut"),
      example.number("/params/min_fail") / 100, example.number("/params/max_fail") / 100};
  const Hofstee found = hofstee(example.numbers("/data/scores"), acceptable);
  CHECK(found.cut.value == near(example.number("/expected/cut")));
  CHECK(100 * found.fails == near(example.number("/expected/fail_percent_at_cut")));
  const std::vector<double> curve = example.numbers("/expected/fail_curve");
  REQUIRE(found.curve.size() == curve.size());
  for (std::size_t i = 0; i < curve.size(); ++i) {
    CHECK(100 * found.curve[i].fails == near(curve[i]));
  }
  CHECK(found.cut.interval.low < found.cut.value);
  CHECK(found.cut.interval.high > found.cut.value);
}

TEST_CASE("where nothing acceptable is met there is no cut") {
  const std::vector<double> marks{90, 92, 94, 96};
  CHECK(!hofstee(marks, {50, 65, 0.05, 0.4}).cut.is_known());
  const std::vector<double> low{10, 12, 14, 16};
  CHECK(!hofstee(low, {50, 65, 0.05, 0.4}).cut.is_known());
  CHECK(!borderline_regression({}, 2).cut.is_known());
  CHECK(!borderline_group({}).mean.is_known());
}

}  // namespace
}  // namespace heelrule
