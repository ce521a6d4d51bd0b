// Intervals of proportions against published cases; the sources stand in
// tests/data/agreement_statistics.json.
#include "engine/agreement/proportion.hpp"

#include <catch2/catch.hpp>

#include "tests/published/statistics.hpp"

namespace heelrule {
namespace {

Approx near(double value) { return Approx(value).epsilon(0).margin(statistics_tolerance); }

void check_interval(const Interval& found, const std::vector<double>& expected) {
  CHECK(found.low == near(expected[0]));
  CHECK(found.high == near(expected[1]));
}

TEST_CASE("intervals of proportions are those of Newcombe 1998 and of other programs") {
  for (const char* id : {"proportions_newcombe1998", "proportions_software_cases"}) {
    const WorkedExample example(id);
    const Ratings cases = example.ratings("/data/x_n");
    for (std::size_t i = 0; i < cases.subjects(); ++i) {
      const double found = cases.at(i, 0);
      const double all = cases.at(i, 1);
      const std::string at = "/expected/" + std::to_string(static_cast<int>(found)) + "~1" +
                             std::to_string(static_cast<int>(all));
      CAPTURE(at);
      check_interval(proportion(found, all).interval, example.numbers(at + "/wilson"));
      check_interval(exact_proportion_interval(found, all),
                     example.numbers(at + "/clopper_pearson"));
      check_interval(corrected_proportion_interval(found, all), example.numbers(at + "/wilson_cc"));
    }
  }
}

}  // namespace
}  // namespace heelrule
