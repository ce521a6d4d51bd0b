#include "engine/agreement/distribution.hpp"

#include <catch2/catch.hpp>
#include <cmath>

namespace heelrule {
namespace {

// Tables in every textbook of statistics (from memory): standard normal, Student's t, chi squared,
// F.
TEST_CASE("quantiles are those of the tables") {
  CHECK(normal_quantile(0.975) == Approx(1.959964).margin(1e-6));
  CHECK(student_quantile(0.975, 4) == Approx(2.776).margin(5e-4));
  CHECK(student_quantile(0.975, 16) == Approx(2.120).margin(5e-4));
  CHECK(chi_squared_quantile(0.95, 10) == Approx(18.307).margin(5e-4));
  CHECK(f_quantile(0.95, 3, 10) == Approx(3.71).margin(5e-3));
  CHECK(f_quantile(0.975, 5, 15) == Approx(3.58).margin(5e-3));
  // The greater of two even shares lies below p with chance p².
  CHECK(beta_quantile(0.25, 2, 1) == Approx(0.5).margin(1e-12));
}

TEST_CASE("shares above undo quantiles") {
  CHECK(normal_share_above(normal_quantile(0.9)) == Approx(0.1).epsilon(1e-12));
  CHECK(student_share_above(student_quantile(0.99, 7), 7) == Approx(0.01).epsilon(1e-9));
  CHECK(f_share_above(f_quantile(0.99, 4, 30), 4, 30) == Approx(0.01).epsilon(1e-9));
}

TEST_CASE("what makes no sense is not-a-number, and nothing is thrown") {
  CHECK(std::isnan(student_quantile(0.5, -1)));
  CHECK(std::isnan(chi_squared_quantile(2, 3)));
  CHECK(std::isnan(f_quantile(0.5, 0, 3)));
}

}  // namespace
}  // namespace heelrule
