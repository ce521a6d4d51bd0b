// Cohen's kappa against published tables; the sources stand in
// tests/data/agreement_statistics.json.
#include "engine/agreement/cohen_kappa.hpp"

#include <catch2/catch.hpp>

#include "engine/agreement/gwet_ac.hpp"
#include "engine/agreement/percent_agreement.hpp"
#include "tests/published/statistics.hpp"

namespace heelrule {
namespace {

Approx near(double value) { return Approx(value).epsilon(0).margin(statistics_tolerance); }

struct NamedWeighting {
  const char* name;
  Weighting weighting;
};

constexpr NamedWeighting all_weightings[] = {{"unweighted", Weighting::unweighted},
                                             {"linear", Weighting::linear},
                                             {"quadratic", Weighting::quadratic}};

// A table that gives every subject two ratings.
LevelCounts counts_of(const CrossTable& table) {
  LevelCounts counts(static_cast<std::size_t>(table.total()), table.levels());
  std::size_t subject = 0;
  for (std::size_t first = 0; first < table.levels(); ++first) {
    for (std::size_t second = 0; second < table.levels(); ++second) {
      for (double n = table.at(first, second); n > 0; --n) {
        counts.add(subject, first, 1);
        counts.add(subject++, second, 1);
      }
    }
  }
  return counts;
}

TEST_CASE("kappa and its standard errors are those of published tables") {
  for (const char* id : {"kappa_cohen1960", "kappa_sas_table10",
                         "kappa_landis_koch1977_ms_new_orleans", "kappa_vision_7477"}) {
    const WorkedExample example(id);
    const CrossTable table = example.table("/data/table");
    for (const auto& [name, weighting] : all_weightings) {
      const std::string at = std::string("/expected/") + name;
      if (!example.has(at)) {
        continue;
      }
      CAPTURE(id, name);
      const CohenKappa found = cohen_kappa(table, LevelWeights(table.levels(), weighting));
      CHECK(found.kappa.observed == near(example.number(at + "/po")));
      CHECK(found.kappa.expected == near(example.number(at + "/pe")));
      CHECK(found.kappa.estimate.value == near(example.number(at + "/kappa")));
      CHECK(found.kappa.estimate.standard_error == near(example.number(at + "/se")));
      CHECK(found.kappa.estimate.interval.low == near(example.number(at + "/ci_low")));
      CHECK(found.kappa.estimate.interval.high == near(example.number(at + "/ci_high")));
      CHECK(found.null_error == near(example.number(at + "/se_null")));
      CHECK(found.z == near(example.number(at + "/z_null")));
    }
  }
}

std::vector<double> flat(const WorkedExample& example, const std::string& pointer, bool disagree) {
  const Ratings rows = example.ratings(pointer);
  double most = 0;
  for (std::size_t i = 0; i < rows.subjects(); ++i) {
    for (std::size_t j = 0; j < rows.observers(); ++j) {
      most = std::max(most, rows.at(i, j));
    }
  }
  std::vector<double> weights;
  for (std::size_t i = 0; i < rows.subjects(); ++i) {
    for (std::size_t j = 0; j < rows.observers(); ++j) {
      weights.push_back(disagree ? 1 - rows.at(i, j) / most : rows.at(i, j));
    }
  }
  return weights;
}

TEST_CASE(
    "kappa with weights chosen by hand is that of Cohen 1968, and of Fleiss and others 1969") {
  const auto check = [](const WorkedExample& example, std::vector<double> weights) {
    const CrossTable table = example.table("/data/table");
    const CohenKappa found = cohen_kappa(table, LevelWeights(table.levels(), std::move(weights)));
    CHECK(found.kappa.estimate.value == near(example.number("/expected/kappa_w")));
    CHECK(found.kappa.estimate.standard_error == near(example.number("/expected/se")));
    CHECK(found.null_error == near(example.number("/expected/se_null")));
    const CohenKappa plain =
        cohen_kappa(table, LevelWeights(table.levels(), Weighting::unweighted));
    CHECK(plain.kappa.estimate.value == near(example.number("/expected/unweighted_kappa")));
  };
  const WorkedExample cohen("kappa_cohen1968_weights");
  check(cohen, flat(cohen, "/data/disagreement", true));
  const WorkedExample fleiss("kappa_fleiss_cohen_everitt1969");
  check(fleiss, flat(fleiss, "/data/agreement_weights", false));
}

void check_paradox(const WorkedExample& example, const std::string& name) {
  CAPTURE(name);
  const std::string at = "/expected/" + name;
  const CrossTable table = example.table("/data/tables/" + name);
  const LevelWeights weights(2, Weighting::unweighted);
  const CohenKappa kappa = cohen_kappa(table, weights);
  CHECK(kappa.kappa.observed == near(example.number(at + "/po")));
  CHECK(kappa.kappa.expected == near(example.number(at + "/pe")));
  CHECK(kappa.kappa.estimate.value == near(example.number(at + "/kappa")));
  const TwoLevelIndices indices = two_level_indices(table);
  CHECK(indices.adjusted_kappa == near(example.number(at + "/pabak")));
  CHECK(indices.prevalence == near(example.number(at + "/prevalence_index")));
  CHECK(indices.bias == near(example.number(at + "/bias_index")));
  const std::vector<double> levels = level_agreement(table);
  CHECK(levels[0] == near(example.number(at + "/p_pos")));
  CHECK(levels[1] == near(example.number(at + "/p_neg")));
  const LevelCounts counts = counts_of(table);
  CHECK(gwet_ac(counts, weights).estimate.value == near(example.number(at + "/ac1")));
  CHECK(free_margin_kappa(counts, weights).estimate.value == near(example.number(at + "/pabak")));
}

TEST_CASE("the paradoxes of kappa come out as published, with the indices that explain them") {
  const WorkedExample feinstein("kappa_paradox_feinstein_cicchetti1990");
  for (const char* name : {"balanced", "skewed", "paradox2_symmetric", "paradox2_asymmetric"}) {
    check_paradox(feinstein, name);
  }
  check_paradox(WorkedExample("kappa_paradox_125"), "t");
}

TEST_CASE("Gwet's coefficients of three abstractors are those of his handbook") {
  const WorkedExample example("gwet_3x3_abstractors");
  const CrossTable table = example.table("/data/table");
  const LevelCounts counts = counts_of(table);
  for (const auto& [name, weighting] : all_weightings) {
    CAPTURE(name);
    const std::string at = std::string("/expected/") + name;
    const LevelWeights weights(table.levels(), weighting);
    const ChanceCorrected gwet = gwet_ac(counts, weights);
    CHECK(gwet.observed == near(example.number(at + "/pa")));
    CHECK(gwet.estimate.value == near(example.number(at + "/gwet")));
    CHECK(gwet.estimate.standard_error == near(example.number(at + "/gwet_se")));
    CHECK(free_margin_kappa(counts, weights).estimate.value ==
          near(example.number(at + "/brennan_prediger")));
    CHECK(cohen_kappa(table, weights).kappa.estimate.value == near(example.number(at + "/cohen")));
  }
}

}  // namespace
}  // namespace heelrule
