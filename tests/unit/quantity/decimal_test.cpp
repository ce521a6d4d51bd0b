#include "engine/quantity/decimal.hpp"

#include <catch2/catch.hpp>
#include <charconv>
#include <cmath>
#include <limits>

namespace heelrule {
namespace {

Problem not_a_number(const std::string& text, std::string hint) {
  return {"`" + text + "` is not a number", std::move(hint)};
}

const std::string usual_hint = "write digits, with a point where decimals follow: `24.3`";

TEST_CASE("a decimal number keeps its digits and its places") {
  CHECK(*parse_decimal("24.30") == Decimal{false, 2430, -2});
  CHECK(*parse_decimal("-7") == Decimal{true, 7, 0});
  CHECK(*parse_decimal("0.05") == Decimal{false, 5, -2});
  CHECK(*parse_decimal("0") == Decimal{});
  CHECK(*parse_decimal("999999999999999") == Decimal{false, 999'999'999'999'999, 0});
}

TEST_CASE("a decimal comma is told how to become a point") {
  CHECK(parse_decimal("24,3").problem() == not_a_number("24,3", "write a decimal point: `24.3`"));
  CHECK(parse_decimal("-0,5").problem() == not_a_number("-0,5", "write a decimal point: `-0.5`"));
}

TEST_CASE("a hint never proposes what would be refused again") {
  for (const std::string text : {"1,234,567", "1.5,3", "5,", ".abc", "-.", "."}) {
    CAPTURE(text);
    CHECK(parse_decimal(text).problem() == not_a_number(text, usual_hint));
  }
}

TEST_CASE("a point needs a digit in front, and keeps its sign in the hint") {
  CHECK(parse_decimal(".5").problem() ==
        not_a_number(".5", "write a digit before the point: `0.5`"));
  CHECK(parse_decimal("-.5").problem() ==
        not_a_number("-.5", "write a digit before the point: `-0.5`"));
}

TEST_CASE("there is one way to write each number") {
  CHECK(parse_decimal("007").problem() == not_a_number("007", "leave the zero in front out"));
  for (const std::string text : {"", "-", "+5", "5.", "1e3", "0x1F", "1_000", " 5", "5 ", "nan",
                                 "inf", "--5", "1.2.3", "five", "½"}) {
    CAPTURE(text);
    CHECK(parse_decimal(text).problem() == not_a_number(text, usual_hint));
  }
}

TEST_CASE("more digits than can be kept are refused, not rounded") {
  const Problem too_long{"`1234567890123456` has more digits than can be kept",
                         "write at most 15 digits"};
  CHECK(parse_decimal("1234567890123456").problem() == too_long);
  CHECK_FALSE(parse_decimal("0.0000000000000001"));
  CHECK(*parse_decimal("0.000000000000001") == Decimal{false, 1, -15});
  CHECK_FALSE(parse_decimal(std::string(100'000, '9')));
}

TEST_CASE("one length is one double, in whatever unit it is written") {
  CHECK(scaled(*parse_decimal("0.29"), 1000) == 290.0);
  CHECK(scaled(*parse_decimal("29"), 10) == 290.0);
  CHECK(scaled(*parse_decimal("9.6"), 254, -1) == 243.84);
  CHECK(scaled(*parse_decimal("50"), 1, -2) == 0.5);
  CHECK(scaled(*parse_decimal("999999999999999"), 31'557'600) ==
        999'999'999'999'999.0 * 31'557'600);
}

TEST_CASE("there is no negative zero") {
  CHECK_FALSE(std::signbit(scaled(*parse_decimal("-0"))));
  CHECK(with_places(-0.04, 1) == "0");
  CHECK(shortest(-0.0) == "0");
}

TEST_CASE("the shortest text reads back as the same double") {
  for (const double value : {0.1, 1.0 / 3, 24.3, 1e-6, 1.23456789012345e-6, -1.7e-5, 9.9e-5, 1e-4,
                             123456789.125, 999999999999999.0}) {
    const std::string text = shortest(value);
    CAPTURE(value, text);
    double read = 0;
    std::from_chars(text.data(), text.data() + text.size(), read);
    CHECK(read == value);
    CHECK(text.find('e') == std::string::npos);
  }
  CHECK(shortest(243.0) == "243");
  CHECK(shortest(-1.7e-5) == "-0.000017");
  CHECK(shortest(1e-6) == "0.000001");
}

TEST_CASE("zeros at the end of decimals are taken off, zeros of whole numbers are not") {
  CHECK(with_places(243.0, 1) == "243");
  CHECK(with_places(243.46, 1) == "243.5");
  CHECK(with_places(100, 0) == "100");
  CHECK(with_places(100, 3) == "100");
  CHECK(with_places(std::numeric_limits<double>::quiet_NaN(), 1) == "nan");
}

}  // namespace
}  // namespace heelrule
