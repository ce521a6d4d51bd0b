// Scores, against weighted sums from the literature on decisions with many criteria. Each criterion
// is a rule that earns as many percent as its trait says.
#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <string>
#include <vector>

#include "engine/quantity/decimal.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

using Values = std::vector<double>;

std::string criterion(std::size_t i) { return "c" + std::to_string(i); }

std::string rules_with(const Values& weights) {
  std::string traits;
  std::string rules;
  for (std::size_t i = 0; i < weights.size(); ++i) {
    traits += "  " + criterion(i) + ": {ask: How much, measure: mm}\n";
    rules +=
        "  " + criterion(i) + ": {section: all, weight: " + with_places(weights[i], 3) +
        ", reads: " + criterion(i) +
        ", bands: [{name: none, below: 0 mm, earns: 0}, {name: some, up to: 100 mm, earns: 0 % "
        ".. 100 %}, {name: most, earns: 100 %}], because: It counts, source: common practice}\n";
  }
  return "title: Sum\nsections: {all: {title: All}}\ntraits:\n" + traits + "rules:\n" + rules +
         "grades: {high: {from: 50, means: High.}, low: {from: 0, means: Low.}}\n";
}

double score(const Values& weights, const Values& values) {
  std::string found;
  for (std::size_t i = 0; i < values.size(); ++i) {
    found += (i > 0 ? ", " : "") + criterion(i) + ": " + with_places(values[i], 6) + " mm";
  }
  const Graded sample =
      graded(rules_with(weights), "inspection: {rules: sum}\nfound: {" + found + "}\n");
  return *sample.verdict.score.points();
}

// Goodwin and Wright, Decision Analysis for Management Judgment, chapter 3: seven offices by
// closeness, visibility, image, size, comfort and parking, with the weights that stand in a book
// and with those that they were rounded from. From memory; all seven printed totals and all six
// printed weights come out of these data.
const std::array<Values, 7> offices{{{100, 60, 100, 75, 0, 90},
                                     {20, 80, 10, 30, 100, 30},
                                     {80, 70, 0, 0, 10, 100},
                                     {70, 50, 30, 55, 30, 90},
                                     {40, 60, 90, 100, 60, 70},
                                     {0, 0, 70, 0, 80, 0},
                                     {60, 100, 20, 50, 50, 80}}};
const Values swings{100, 80, 70, 30, 20, 10};

TEST_CASE("seven offices have the totals that were printed") {
  const Values rounded{32, 26, 23, 10, 6, 3};
  const std::array<double, 7> printed{80.8, 39.4, 47.4, 52.3, 64.8, 20.9, 60.2};
  for (std::size_t i = 0; i < offices.size(); ++i) {
    CHECK(score(rounded, offices[i]) == Approx(printed[i]).epsilon(1e-12));
  }
}

TEST_CASE("seven offices by the weights before they were rounded") {
  const std::array<double, 7> exact{80.48387096774192, 39.67741935483871, 47.74193548387097,
                                    52.41935483870968, 64.51612903225805, 20.967741935483872,
                                    60.32258064516128};
  for (std::size_t i = 0; i < offices.size(); ++i) {
    CHECK(score(swings, offices[i]) == Approx(exact[i]).epsilon(1e-9));
  }
}

// Triantaphyllou and Sanchez 1997, Decision Sciences 28, 151 to 194: the weighted sum model, four
// alternatives by four criteria. Numbers from memory; three of the four printed priorities come out
// to four digits, and the third as 0.2623 where 0.2621 was printed.
TEST_CASE("four alternatives have the priorities of the weighted sum model") {
  const Values weights{327.7, 305.8, 287.6, 79};
  const std::array<Values, 4> alternatives{{{30.88, 28.97, 38.67, 19.22},
                                            {21.63, 34.58, 17.55, 62.88},
                                            {45.09, 24.73, 11.94, 5.75},
                                            {2.4, 11.72, 31.84, 12.15}}};
  const std::array<double, 4> expected{31.618274, 27.677615, 26.226621, 14.487490};
  const std::array<double, 4> printed{31.62, 27.68, 26.21, 14.49};
  for (std::size_t i = 0; i < alternatives.size(); ++i) {
    const double found =
        score(weights, alternatives[i]) * 1.0001;  // their weights add up to 1.0001
    CHECK(found == Approx(expected[i]).epsilon(1e-9));
    CHECK(found == Approx(printed[i]).margin(i == 2 ? 0.03 : 0.006));
  }
}

std::size_t best_with(const Values& weights) {
  std::size_t best = 0;
  for (std::size_t i = 1; i < offices.size(); ++i) {
    best = score(weights, offices[i]) > score(weights, offices[best]) ? i : best;
  }
  return best;
}

// One weight is varied and the others share the rest as before. From where to where the first
// office stays the best was worked out by another program, in closed form and on a fine grid.
TEST_CASE("a weight may vary just so far before another office is the best") {
  struct Stays {
    std::size_t criterion;
    double low;
    double high;
  };
  for (const Stays& stays : {Stays{0, 0.07692307692307672, 1}, Stays{1, 0, 0.5067024128686327},
                             Stays{2, 0, 1}, Stays{3, 0, 0.4488188976377953},
                             Stays{4, 0, 0.2611464968152867}, Stays{5, 0, 0.7735849056603773}}) {
    const auto best_at = [&](double weight) {
      Values weights = swings;
      const double others = 310 - swings[stays.criterion];
      for (double& one : weights) {
        one *= 1000 * (1 - weight) / others;
      }
      weights[stays.criterion] = 1000 * weight;
      return best_with(weights);
    };
    CAPTURE(stays.criterion);
    constexpr double a_little = 0.0005;
    CHECK(best_at(stays.low + a_little) == 0);
    CHECK(best_at(stays.high - a_little) == 0);
    if (stays.low > 0) {
      CHECK(best_at(stays.low - a_little) != 0);
    }
    if (stays.high < 1) {
      CHECK(best_at(stays.high + a_little) != 0);
    }
  }
}

}  // namespace
}  // namespace heelrule
