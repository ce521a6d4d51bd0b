#include "engine/formula/operation.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

using operation::is_seen;
using operation::not_seen;

// Kleene's strong tables: rows and columns are no, not seen, yes.
constexpr double three[] = {0, not_seen, 1};

bool same(double a, double b) { return a == b || (!is_seen(a) && !is_seen(b)); }

TEST_CASE("`and` follows the table of three-valued logic") {
  constexpr double table[3][3] = {{0, 0, 0}, {0, not_seen, not_seen}, {0, not_seen, 1}};
  for (int a = 0; a < 3; ++a) {
    for (int b = 0; b < 3; ++b) {
      CAPTURE(a, b);
      CHECK(same(operation::logical_and(three[a], three[b]), table[a][b]));
    }
  }
}

TEST_CASE("`or` follows the table of three-valued logic") {
  constexpr double table[3][3] = {{0, not_seen, 1}, {not_seen, not_seen, 1}, {1, 1, 1}};
  for (int a = 0; a < 3; ++a) {
    for (int b = 0; b < 3; ++b) {
      CAPTURE(a, b);
      CHECK(same(operation::logical_or(three[a], three[b]), table[a][b]));
    }
  }
}

TEST_CASE("`not` leaves open what is open") {
  CHECK(operation::logical_not(0) == 1);
  CHECK(operation::logical_not(1) == 0);
  CHECK_FALSE(is_seen(operation::logical_not(not_seen)));
}

TEST_CASE("`if` without its condition is decided where both ways come to the same") {
  CHECK(operation::choose(1, 3, 4) == 3);
  CHECK(operation::choose(0, 3, 4) == 4);
  CHECK(operation::choose(1, 3, not_seen) == 3);
  CHECK(operation::choose(0, not_seen, 4) == 4);
  CHECK(operation::choose(not_seen, 4, 4) == 4);
  CHECK_FALSE(is_seen(operation::choose(not_seen, 3, 4)));
  CHECK_FALSE(is_seen(operation::choose(not_seen, 4, not_seen)));
  CHECK_FALSE(is_seen(operation::choose(1, not_seen, 4)));
}

TEST_CASE("arithmetic and comparison with a value that was not seen are not seen") {
  for (const auto& function : {operation::add, operation::subtract, operation::multiply,
                               operation::divide, operation::minimum, operation::maximum,
                               operation::less, operation::at_most, operation::equal}) {
    CHECK_FALSE(is_seen(function(not_seen, 2)));
    CHECK_FALSE(is_seen(function(2, not_seen)));
    CHECK_FALSE(is_seen(function(not_seen, not_seen)));
  }
}

// In binary fractions 264.4 - 254.4 is 9.999999999999972, and 0.3 - 0.1 is less than 0.2.
TEST_CASE("values are compared as they are on paper") {
  const double ten = operation::subtract(264.4, 254.4);
  REQUIRE(ten != 10);
  CHECK(operation::equal(ten, 10) == 1);
  CHECK(operation::at_most(10, ten) == 1);
  CHECK(operation::less(ten, 10) == 0);
  const double fifth = operation::subtract(0.3, 0.1);
  REQUIRE(fifth < 0.2);
  CHECK(operation::less(fifth, 0.2) == 0);
  CHECK(operation::choose(not_seen, fifth, 0.2) == 0.2);
  CHECK(operation::less(0.199999998, 0.2) == 1);
}

TEST_CASE("a division by what is zero on paper is not seen") {
  CHECK(operation::divide(7, 2) == 3.5);
  CHECK_FALSE(is_seen(operation::divide(7, 0)));
  CHECK_FALSE(is_seen(operation::divide(0, 0)));
  const double dust = operation::subtract(operation::subtract(264.4, 254.4), 10);
  REQUIRE(dust != 0);
  CHECK_FALSE(is_seen(operation::divide(7, dust)));
}

TEST_CASE("tangent and arctangent count in degrees, and a right angle has no tangent") {
  CHECK(operation::tangent(45) == Approx(1).epsilon(1e-15));
  CHECK(operation::tangent(-45) == Approx(-1).epsilon(1e-15));
  CHECK(operation::arctangent(1) == Approx(45).epsilon(1e-15));
  for (const double angle : {90.0, -90.0, 270.0, 450.0, 90.00000000000001}) {
    CAPTURE(angle);
    CHECK_FALSE(is_seen(operation::tangent(angle)));
  }
  CHECK(is_seen(operation::tangent(89.999)));
}

TEST_CASE("the smaller and the larger of two values are those values") {
  CHECK(operation::minimum(3, 2) == 2);
  CHECK(operation::maximum(3, 2) == 3);
  CHECK(operation::minimum(-2, -3) == -3);
  CHECK(operation::absolute(operation::negate(2.5)) == 2.5);
}

}  // namespace
}  // namespace heelrule
