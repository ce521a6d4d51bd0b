// How long a child's pair lasts, against figures and hand calculations.
#include <catch2/catch.hpp>

#include "engine/fitting/child_outlook.hpp"
#include "engine/fitting/growth.hpp"
#include "tests/unit/fitting/two_feet.hpp"

namespace heelrule {
namespace {

double months_to_outgrow(double reserve, double age) {
  const auto days = outgrown_by_age(about(reserve, 0), age).expected;
  REQUIRE(days);
  return *days / days_in_a_month;
}

// 12 mm in front (Maier, secondary source), of which a step takes 5 (from memory): 7 mm are left.
// 7 / 1.5 mm a month for toddlers and 7 / 1 mm for small children (common practice), and 7 / (8.5 /
// 12) mm for boys from 3 to 15 years, 156 to 258 mm (Cheng 1997).
TEST_CASE("7 mm last 4.7 months at 18 months of age, 7 at 3 years, and 9.9 at 6") {
  CHECK(months_to_outgrow(7, 1.5) == Approx(4.7).margin(0.05));
  CHECK(months_to_outgrow(7, 3) == Approx(7.0).margin(0.05));
  CHECK(months_to_outgrow(7, 6) == Approx(9.9).margin(0.05));
}

// Gould 1990 (n 107): below 15 months half a size in less than 2 months, then in 2 to 3, from 2
// years in 3 to 4, from 3 years in 4. A half size is 25.4 / 6 mm.
TEST_CASE("half a size takes as long as Gould saw it take") {
  const double half_size = 25.4 / 6;
  CHECK(months_to_outgrow(half_size, 0.5) == Approx(2).margin(0.05));
  CHECK(months_to_outgrow(half_size, 1.4) > 2);
  CHECK(months_to_outgrow(half_size, 1.4) < 3);
  CHECK(months_to_outgrow(half_size, 2.1) > 3);
  CHECK(months_to_outgrow(half_size, 2.1) < 4);
  CHECK(months_to_outgrow(half_size, 3.5) == Approx(4).margin(0.3));
}

// Cheng 1997 (n 2829): boys' feet are 156 ± 8 mm long at 3 years and 258 ± 15 mm at 18, and grow
// evenly to 15; girls' 153 ± 9 mm at 3 years and 234 ± 13 mm at 17. What the table adds to 3 years
// has to end between the two.
TEST_CASE("from 3 years on the table grows feet to the length of the grown") {
  const double years = 365.25;
  const double grown = usual_growth(3, 15 * years, &GrowthPace::expected);
  CHECK(156 + grown < 258 + 15);
  CHECK(153 + grown > 234 - 13);
}

// The example in examples/child: 172 and 173 mm on 2026-02-03, each read once and good to 1 mm;
// 178.333 and 179.333 mm on 2026-10-03, each read three times with a scatter of 0.577 mm. By hand:
//
//   time          242 days / 30.4375 = 7.95072 months
//   doubts        1 mm; √(1 + 0.57735² / 3) = 1.05409 mm; of the means of two feet 0.70711 and
//   0.74536 rate          (178.8333 - 172.5) / 7.95072 = 0.79657 mm a month its doubt     √(0.5 +
//   0.55556) / 7.95072 = 0.12922, below (15 - 8) / 12 / √12 = 0.16839 together      0.55556
//   / 7.95072 = 0.06988 mm²/month new pair      12 - 5 = 7 ± 1.05409 mm are left expected      7 /
//   0.79657 = 8.78768 months = 267.5 days: day 268, 2027-06-28 earliest      day 154 = 5.05955
//   months: 4.0303 + 2 √(1.11111 + 0.42746 + 0.70708) = 7.0273; the
//                 day before 4.0041 + 2 √(1.11111 + 0.42193 + 0.70249) = 6.9945: 2027-03-06
//   latest        day 475 = 15.60575 months: 12.4311 - 2 √(1.11111 + 4.06672 + 2.18097) = 7.0057;
//   the
//                 day before 12.4049 - 2 √(1.11111 + 4.04961 + 2.17638) = 6.9876: 2028-01-21
TEST_CASE("two visits of a child give a date with its spread, as worked out by hand") {
  std::vector<Visit> visits{two_feet_on("2026-02-03", 172, 173),
                            two_feet_on("2026-10-03", 178 + 1.0 / 3, 179 + 1.0 / 3, 1.0540926)};
  visits.back().age = 5.5;
  const auto child = child_outlook(visits, {Millimetres(5), Millimetres(10), Millimetres(17)});
  REQUIRE(child);
  REQUIRE(child->own);
  CHECK(child->own->a_month == Approx(0.79657).margin(1e-5));
  CHECK(child->own->doubt == Approx(0.12922).margin(1e-5));
  CHECK(child->own->covariance == Approx(0.06988).margin(1e-5));
  CHECK(child->by_own_rate);
  const Outgrowing& days = child->fresh.outgrown;
  REQUIRE((days.earliest && days.expected && days.latest));
  const auto visit = *visits.back().date;
  CHECK(show(days_after(visit, *days.earliest)) == "2027-03-06");
  CHECK(show(days_after(visit, *days.expected)) == "2027-06-28");
  CHECK(show(days_after(visit, *days.latest)) == "2028-01-21");
}

}  // namespace
}  // namespace heelrule
