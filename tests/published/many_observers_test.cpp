// Fleiss's kappa and Krippendorff's alpha against published tables; the sources stand in
// tests/data/agreement_statistics.json.
#include <catch2/catch.hpp>

#include "engine/agreement/fleiss_kappa.hpp"
#include "engine/agreement/krippendorff_alpha.hpp"
#include "engine/agreement/percent_agreement.hpp"
#include "tests/published/statistics.hpp"

namespace heelrule {
namespace {

Approx near(double value) { return Approx(value).epsilon(0).margin(statistics_tolerance); }

LevelCounts counts_in(const WorkedExample& example) {
  return example.has("/data/counts") ? example.counts("/data/counts")
                                     : level_counts(example.ratings("/data/ratings", 1), 5);
}

TEST_CASE("Fleiss's kappa is that of published tables, as a whole and level by level") {
  for (const char* id : {"fleiss_10x14", "fleiss1971_diagnoses", "randolph_free_marginal_1",
                         "randolph_free_marginal_2"}) {
    CAPTURE(id);
    const WorkedExample example(id);
    const LevelCounts counts = counts_in(example);
    const LevelWeights weights(counts.levels(), Weighting::unweighted);
    const FleissKappa found = fleiss_kappa(counts, weights);
    CHECK(found.kappa.observed == near(example.number("/expected/P_bar")));
    CHECK(found.kappa.estimate.value == near(example.number("/expected/kappa")));
    CHECK(free_margin_kappa(counts, weights).estimate.value ==
          near(example.number("/expected/randolph_free_marginal")));
    if (!example.has("/expected/z")) {
      continue;
    }
    CHECK(found.kappa.expected == near(example.number("/expected/Pe_bar")));
    CHECK(found.null_error == near(example.number("/expected/se_null_1979")));
    CHECK(found.z == near(example.number("/expected/z")));
    const std::vector<double> shares = mean_shares(counts);
    const std::vector<double> expected_shares = example.numbers("/expected/p_j");
    const std::vector<double> kappas = example.numbers("/expected/kappa_j");
    for (std::size_t level = 0; level < counts.levels(); ++level) {
      CHECK(shares[level] == near(expected_shares[level]));
      CHECK(found.level_kappas[level] == near(kappas[level]));
    }
    const std::vector<double> agreements = example.numbers("/expected/P_i");
    for (std::size_t subject = 0; subject < counts.subjects(); ++subject) {
      CHECK(pair_agreement(counts, subject, weights) == near(agreements[subject]));
    }
  }
}

TEST_CASE("Krippendorff's alpha is that of published tables by every metric, ratings missing") {
  struct NamedMetric {
    const char* name;
    Metric metric;
  };
  for (const char* id : {"krippendorff2011_4x12", "krippendorff_wikipedia_3x15"}) {
    const WorkedExample example(id);
    const Ratings ratings = example.ratings("/data/units_by_raters", 1);
    const std::vector<double> numbers{1, 2, 3, 4, 5};
    for (const auto& [name, metric] :
         {NamedMetric{"nominal", Metric::nominal}, NamedMetric{"ordinal", Metric::ordinal},
          NamedMetric{"interval", Metric::interval}, NamedMetric{"ratio", Metric::ratio}}) {
      if (!example.has(std::string("/expected/") + name)) {
        continue;
      }
      CAPTURE(id, name);
      const KrippendorffAlpha found = krippendorff_alpha(level_counts(ratings, 5), metric, numbers);
      CHECK(found.estimate.value == near(example.number(std::string("/expected/") + name)));
      CHECK(found.pairable == example.number("/expected/n_pairable"));
    }
    const KrippendorffAlpha by_sums = interval_alpha(example.ratings("/data/units_by_raters"));
    const KrippendorffAlpha by_levels =
        krippendorff_alpha(level_counts(ratings, 5), Metric::interval, numbers);
    CHECK(by_sums.estimate.value == near(by_levels.estimate.value));
    CHECK(by_sums.estimate.standard_error == near(by_levels.estimate.standard_error));
  }
}

}  // namespace
}  // namespace heelrule
