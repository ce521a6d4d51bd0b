// The function `monthly_growth`, against the table that `size` reckons with.
#include <catch2/catch.hpp>

#include "engine/fitting/growth.hpp"
#include "engine/quantity/decimal.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

// What a rule reads where a trait is the growth of this age; nothing where it cannot be decided.
std::optional<double> growth_read(const std::string& age) {
  const Graded sample = graded(
      "title: House\n"
      "sections: {fit: {title: Fit}}\n"
      "traits:\n"
      "  age: {ask: Age, measure: years, per: client}\n"
      "  growth: {ask: Growth, derive: monthly_growth(age), shown: mm}\n"
      "rules:\n"
      "  growth:\n"
      "    {section: fit, weight: 1, reads: growth, because: It grows., source: common practice,\n"
      "     bands: [{name: less, below: 1 mm, earns: 0}, {name: more, earns: 100 %}]}\n"
      "grades: {sound: {from: 50, means: Keep it.}, unfit: {from: 0, means: Leave it.}}\n",
      "inspection: {rules: house}\nfound: {age: " + age + "}\n");
  const auto& readings = sample.verdict.findings.front().readings;
  return readings.empty() ? std::nullopt : std::optional(readings.front().value);
}

TEST_CASE("a rule reckons with the same growth as a forecast does") {
  for (const std::string_view age : {"0", "1.2", "1.25", "1.99", "2", "2.5", "3", "4.9", "5",
                                     "11.9", "12", "14.9", "15", "17", "80"}) {
    CAPTURE(age);
    const auto read = growth_read(std::string(age) + " years");
    REQUIRE(read);
    CHECK(*read == Approx(growth_stage(scaled(*parse_decimal(age))).pace.expected).margin(1e-9));
  }
}

TEST_CASE("a stage begins on its birthday, in whatever unit the age is written") {
  CHECK(growth_read("15 months") == 1.5);
  CHECK(growth_read("24 months") == 1.25);
  CHECK(growth_read("36 months") == 1);
}

TEST_CASE("of an age that was not seen the growth is not known") {
  CHECK_FALSE(growth_read("not seen"));
}

}  // namespace
}  // namespace heelrule
