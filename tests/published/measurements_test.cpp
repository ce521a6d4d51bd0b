// Intraclass correlation, limits of agreement and errors of measurement against published data; the
// sources stand in tests/data/agreement_statistics.json.
#include <catch2/catch.hpp>

#include "engine/agreement/internal_consistency.hpp"
#include "engine/agreement/intraclass.hpp"
#include "engine/agreement/limits_of_agreement.hpp"
#include "engine/agreement/measurement_error.hpp"
#include "tests/published/statistics.hpp"

namespace heelrule {
namespace {

Approx near(double value) { return Approx(value).epsilon(1e-12).margin(statistics_tolerance); }

Ratings columns(const std::vector<std::vector<double>>& columns) {
  Ratings result(columns.front().size(), columns.size());
  for (std::size_t observer = 0; observer < columns.size(); ++observer) {
    for (std::size_t subject = 0; subject < columns[observer].size(); ++subject) {
      result.set(subject, observer, columns[observer][subject]);
    }
  }
  return result;
}

TEST_CASE("the six intraclass correlations are those of Shrout and Fleiss 1979") {
  const WorkedExample example("icc_shrout_fleiss1979");
  const Ratings ratings = example.ratings("/data/targets_by_judges");
  const MeanSquares squares = mean_squares(ratings);
  CHECK(squares.between_subjects == near(example.number("/expected/MSB")));
  CHECK(squares.within_subjects == near(example.number("/expected/MSW")));
  CHECK(squares.between_observers == near(example.number("/expected/MSJ")));
  CHECK(squares.residual == near(example.number("/expected/MSE")));
  const char* names[] = {"ICC11", "ICC21", "ICC31", "ICC1k", "ICC2k", "ICC3k"};
  for (std::size_t i = 0; i < intraclass_forms.size(); ++i) {
    CAPTURE(names[i]);
    const Estimate found = intraclass(squares, intraclass_forms[i]);
    const std::string at = std::string("/expected/") + names[i];
    CHECK(found.value == near(example.number(at)));
    const std::vector<double> interval = example.numbers(at + "_ci");
    CHECK(found.interval.low == near(interval[0]));
    CHECK(found.interval.high == near(interval[1]));
  }
  const MeasurementError error = measurement_error(ratings);
  CHECK(error.agreement_error.value == near(example.number("/expected/SEM_agreement")));
  CHECK(error.consistency_error.value == near(example.number("/expected/SEM_consistency")));
  CHECK(error.agreement_change.value == near(example.number("/expected/SDC_agreement")));
  CHECK(error.consistency_change.value == near(example.number("/expected/SDC_consistency")));
}

void check_limits(const char* id) {
  CAPTURE(id);
  const WorkedExample example(id);
  const Ratings ratings =
      columns({example.numbers("/data/method_a"), example.numbers("/data/method_b")});
  const LimitsOfAgreement found =
      limits_of_agreement(measured_pairs(ratings, 0, 1), example.number("/params/multiplier"));
  CHECK(found.subjects == example.number("/expected/n"));
  CHECK(found.bias.value == near(example.number("/expected/mean_diff")));
  CHECK(found.deviation == near(example.number("/expected/sd_diff")));
  CHECK(found.bias.standard_error == near(example.number("/expected/se_mean")));
  CHECK(found.low.value == near(example.number("/expected/loa_low")));
  CHECK(found.high.value == near(example.number("/expected/loa_high")));
  CHECK(found.low.standard_error == near(example.number("/expected/se_limit_approx_sqrt3s2n")));
  CHECK(found.correlation == near(example.number("/expected/pearson_r")));
  const auto check_interval = [&](const Estimate& estimate, const char* name) {
    const std::vector<double> interval = example.numbers(std::string("/expected/") + name);
    CHECK(estimate.interval.low == near(interval[0]));
    CHECK(estimate.interval.high == near(interval[1]));
  };
  check_interval(found.bias, "mean_ci");
  check_interval(found.low, "loa_low_ci");
  check_interval(found.high, "loa_high_ci");
}

TEST_CASE("limits of agreement are those of Bland and Altman 1986, by 2 and by 1.96 deviations") {
  check_limits("bland_altman1986_pefr_2sd");
  check_limits("bland_altman1986_pefr_196");
}

TEST_CASE("the correction for means of two readings is that of Bland and Altman 1986") {
  const WorkedExample example("bland_altman1986_replicates");
  CHECK(single_reading_deviation(example.number("/expected/sD"), example.number("/expected/s1"),
                                 example.number("/expected/s2")) ==
        near(example.number("/expected/sd_corrected")));
}

TEST_CASE("the technical error of peak flow readings is that of the published pairs") {
  const WorkedExample example("tem_pefr_pairs");
  for (const char* meter : {"wright", "mini_wright"}) {
    CAPTURE(meter);
    const Ratings by_observer = example.ratings(std::string("/data/pairs/") + meter);
    Ratings ratings(by_observer.observers(), 2);
    for (std::size_t subject = 0; subject < ratings.subjects(); ++subject) {
      ratings.set(subject, 0, by_observer.at(0, subject));
      ratings.set(subject, 1, by_observer.at(1, subject));
    }
    const std::string at = std::string("/expected/") + meter;
    const MeasurementError found = measurement_error(ratings);
    CHECK(found.technical.value == near(example.number(at + "/tem")));
    CHECK(100 * found.relative == near(example.number(at + "/tem_rel_percent")));
    CHECK(found.repeatability == near(example.number(at + "/repeatability_limit_1.96sqrt2sw")));
    CHECK(found.reliability == near(example.number(at + "/reliability_R")));
    CHECK(limits_of_agreement(measured_pairs(ratings, 0, 1)).deviation ==
          near(example.number(at + "/sd_of_differences_n_minus_1")));
  }
}

TEST_CASE("Cronbach's alpha is that of published items") {
  const WorkedExample from_variances("cronbach_bland_altman1997");
  CHECK(cronbach_alpha(from_variances.number("/data/k"),
                       from_variances.number("/data/sum_item_var"),
                       from_variances.number("/data/total_var")) ==
        near(from_variances.number("/expected/alpha")));
  for (const char* id : {"cronbach_quest_10x3", "cronbach_shrout_fleiss"}) {
    CAPTURE(id);
    const WorkedExample example(id);
    const InternalConsistency found = internal_consistency(example.ratings("/data/items"));
    CHECK(found.alpha == near(example.number("/expected/alpha")));
    CHECK(found.standardised_alpha == near(example.number("/expected/std_alpha")));
    CHECK(found.total_variance == near(example.number("/expected/total_var")));
    CHECK(found.total_error == near(example.number("/expected/sem_total")));
    const std::vector<double> variances = example.numbers("/expected/item_var");
    for (std::size_t item = 0; item < variances.size(); ++item) {
      CHECK(found.item_variances[item] == near(variances[item]));
      CHECK(found.alpha_without[item] ==
            near(example.number("/expected/alpha_drop_" + std::to_string(item + 1))));
    }
  }
}

}  // namespace
}  // namespace heelrule
