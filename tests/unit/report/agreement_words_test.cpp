#include "engine/report/agreement_words.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("figures are printed so that none claims to be 1 or 0 that is not") {
  CHECK(figure_words(0.4915) == "0.49");
  CHECK(figure_words(0.9981) == "0.998");
  CHECK(figure_words(1) == "1.00");
  CHECK(figure_words(-0.0) == "0.00");
  CHECK(figure_words(unknown) == "–");
  CHECK(share_words(0.85) == "85 %");
  CHECK(share_words(0.001) == "under 1 %");
  CHECK(share_words(0.999) == "over 99 %");
  CHECK(share_words(1) == "100 %");
}

// Feinstein and Cicchetti 1990: 85 % agreement, kappa 0.32 (see
// tests/published/cohen_kappa_test.cpp).
TEST_CASE("high agreement with a low kappa is told of, with the reason and the rare cases") {
  Ratings ratings(100, 2);
  for (std::size_t i = 0; i < 100; ++i) {
    ratings.set(i, 0, i < 90 ? 0 : 1);
    ratings.set(i, 1, i < 80 || (i >= 90 && i < 95) ? 0 : 1);
  }
  const ScaledRatings scaled = level_ratings(ratings, 2, false);
  const std::vector<Remark> said = remarks(scaled, coefficients(scaled));
  REQUIRE(said.size() == 1);
  const std::vector<std::string> levels{"yes", "no"};
  CHECK(remark_words(said[0], levels) ==
        "The observers agree on 85 % of the pairs, and kappa is 0.31 all the same. Both are right: "
        "88 % of the ratings are `yes`, so chance alone would give much agreement, and kappa takes "
        "that off. It rests on the few cases that are something else. Gwet's AC1, which minds that "
        "less, is 0.81. To know more, show the observers more of the rare cases.");
}

TEST_CASE("ratings that are all the same are told to show little") {
  Ratings ratings(12, 2);
  for (std::size_t i = 0; i < 12; ++i) {
    ratings.set(i, 0, 1);
    ratings.set(i, 1, 1);
  }
  const ScaledRatings scaled = level_ratings(ratings, 2, false);
  const std::vector<Remark> said = remarks(scaled, coefficients(scaled));
  REQUIRE(said.size() == 1);
  const std::vector<std::string> levels{"no", "yes"};
  CHECK(remark_words(said[0], levels) ==
        "Every rating is `yes`. That the observers agree shows little: whether they would tell it "
        "from anything else was not put to the test.");
}

TEST_CASE("measurements of alike subjects are told to be close although the correlation is low") {
  Ratings ratings(12, 2);
  for (std::size_t i = 0; i < 12; ++i) {
    ratings.set(i, 0, 240 + static_cast<double>(i % 2));
    ratings.set(i, 1, 240 + static_cast<double>(i % 3));
  }
  const ScaledRatings scaled = measured_ratings(ratings);
  const std::vector<Remark> said = remarks(scaled, coefficients(scaled));
  REQUIRE(said.size() == 1);
  CHECK(remark_words(said[0], {}).starts_with("Krippendorff's alpha is low (-0."));
}

TEST_CASE("a coefficient below 0 is told as less than chance") {
  Coefficient coefficient;
  coefficient.name = CoefficientName::fleiss_kappa;
  coefficient.estimate.value = -0.1;
  CHECK(meaning_words(coefficient) ==
        "The observers agree less often than chance would make them.");
  coefficient.estimate.value = unknown;
  CHECK(meaning_words(coefficient) ==
        "It cannot be worked out: the ratings do not differ, or too few were made.");
}

}  // namespace
}  // namespace heelrule
