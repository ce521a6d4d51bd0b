#include "engine/quantity/quantity.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("a quantity is a number and its unit, with or without a blank") {
  CHECK(*parse_quantity("243 mm") == Quantity{243, Unit::millimetre});
  CHECK(*parse_quantity("243mm") == Quantity{243, Unit::millimetre});
  CHECK(*parse_quantity("  9.6   in ") == Quantity{243.84, Unit::inch});
  CHECK(*parse_quantity("7°") == Quantity{7, Unit::degree});
  CHECK(*parse_quantity("-5 mm") == Quantity{-5, Unit::millimetre});
  CHECK(*parse_quantity("0.3 N·m/°") == Quantity{300, Unit::newton_metre_per_degree});
  CHECK(*parse_quantity("50 %") == Quantity{0.5, Unit::percent});
  CHECK(*parse_quantity("3") == Quantity{3, Unit::count});
}

TEST_CASE("an unknown unit gets a question, or a list where nothing is near") {
  CHECK(parse_quantity("9.6 im").problem() ==
        Problem{"`im` is no unit known here", "did you mean `in`?"});
  CHECK(parse_quantity("3 mounths").problem() ==
        Problem{"`mounths` is no unit known here", "did you mean `months`?"});
  CHECK(parse_quantity("3 x").problem() ==
        Problem{"`x` is no unit known here", "write a unit such as `mm`, `cm`, `°`, `g` or `%`"});
}

TEST_CASE("a quantity without a number is no number") {
  for (const std::string text : {"", " ", "mm", "nan mm", "inf", "1e3 mm"}) {
    CAPTURE(text);
    CHECK_FALSE(parse_quantity(text));
  }
  CHECK(parse_quantity("24,3 cm").problem() ==
        Problem{"`24,3` is not a number", "write a decimal point: `24.3`"});
  CHECK(parse_quantity("1-2 mm").problem().message == "`1-2` is not a number");
}

TEST_CASE("a range has two ends of one kind, the smaller first") {
  const auto range = parse_range("80 mm .. 34 cm");
  REQUIRE(range);
  CHECK(range->from == Quantity{80, Unit::millimetre});
  CHECK(range->to == Quantity{340, Unit::centimetre});
  CHECK(parse_range("5 mm .. 5 mm"));
  CHECK(parse_range("80 mm").problem() ==
        Problem{"`80 mm` is no range",
                "write both ends with two dots between them: `80 mm .. 340 mm`"});
  CHECK(parse_range("80 .. 340 mm").problem() ==
        Problem{"the ends of `80 .. 340 mm` are of different kinds",
                "write both ends in units of one kind: `80 mm .. 340 mm`"});
  CHECK(parse_range("340 mm .. 80 mm").problem() ==
        Problem{"the range `340 mm .. 80 mm` runs downward", "write the smaller end first"});
  CHECK(parse_range("80 mm .. ").problem().message == "`` is not a number");
}

TEST_CASE("a bare number and a percentage do not stand for each other") {
  CHECK(accepts(Unit::millimetre, Unit::inch, "9.6 in") == Problem{});
  CHECK(accepts(Unit::percent, Unit::percent, "50 %") == Problem{});
  CHECK(accepts(Unit::percent, Unit::count, "50") ==
        Problem{"`50` has no unit, and a percentage is due here", "write the unit: `50 %`"});
  CHECK(accepts(Unit::count, Unit::percent, "50 %") ==
        Problem{"`50 %` has a unit, and a bare number is due here", "write a number such as `12`"});
  CHECK(accepts(Unit::millimetre, Unit::count, "243") ==
        Problem{"`243` has no unit, and a length is due here", "write the unit: `243 mm`"});
  CHECK(accepts(Unit::degree, Unit::millimetre, "7 mm") ==
        Problem{"`7 mm` is a length, and an angle is due here", "write a value such as `7°`"});
}

TEST_CASE("a quantity is read in a unit that can stand where another is due") {
  CHECK(*parse_quantity_in("24.3 cm", Unit::millimetre) == Quantity{243, Unit::centimetre});
  CHECK(parse_quantity_in("243", Unit::millimetre).problem() ==
        accepts(Unit::millimetre, Unit::count, "243"));
  CHECK(parse_quantity_in("24 cn", Unit::millimetre).problem() ==
        parse_quantity("24 cn").problem());
}

TEST_CASE("a value is shown with the decimals that are worth printing") {
  CHECK(show(243.46, Unit::millimetre) == "243.5 mm");
  CHECK(show(243.84, Unit::inch) == "9.6 in");
  CHECK(show(7, Unit::degree) == "7°");
  CHECK(show(0.5, Unit::percent) == "50 %");
  CHECK(show(12, Unit::count) == "12");
  CHECK(show(0.333, Unit::percent, 0) == "33 %");
  CHECK(show(2'629'800, Unit::month) == "1 month");
  CHECK(show(-31'557'600, Unit::year) == "-1 year");
  CHECK(show(1.1 * 604'800, Unit::week) == "1.1 weeks");
  CHECK(show(0, Unit::day) == "0 days");
  CHECK(show(1, Unit::second) == "1 s");
}

}  // namespace
}  // namespace heelrule
