// Units of length behind shoe sizes, and the units in which readings are written.
#include <catch2/catch.hpp>

#include "engine/quantity/shoe_size.hpp"
#include "engine/quantity/unit.hpp"

namespace heelrule {
namespace {

double step(std::string_view size) { return size_step(*parse_shoe_size(size)).value(); }

// ISO/TS 19407, secondary source: a Paris point is 2/3 cm, an English size 1/3 in of last length.
TEST_CASE("Paris points are two thirds of a centimetre, English sizes a third of an inch") {
  CHECK(whole_size(SizeSystem::european).value() == Approx(6.6667).epsilon(1e-5));
  CHECK(whole_size(SizeSystem::british).value() == Approx(8.4667).epsilon(1e-5));
  CHECK(step("UK 6") == Approx(4.2333).epsilon(1e-5));
  CHECK(3 * whole_size(SizeSystem::european).value() == Approx(20).epsilon(1e-15));
  CHECK(3 * whole_size(SizeSystem::american_women).value() == Approx(25.4).epsilon(1e-15));
}

// GB/T 3293.1-1998 (= ISO 9407:1991) and DIN 66074-2:1975, secondary sources: 10 mm whole, 5 mm
// half.
TEST_CASE("Mondopoint and the sizes that follow it have whole steps of 10 mm and halves of 5 mm") {
  for (const SizeSystem system :
       {SizeSystem::mondopoint, SizeSystem::chinese, SizeSystem::russian, SizeSystem::japanese}) {
    CHECK(whole_size(system) == Millimetres(10));
  }
  CHECK(step("MP 245") == 5);
  CHECK(step("JP 24.5") == 5);
  CHECK(step("CN 245") == 5);
}

// GOST 11373-88 (= ISO 3355-75), secondary source: 5 mm, and 7.5 mm for heavy and special footwear.
TEST_CASE("Russian sizes step by 5 mm, and by 7.5 mm for special footwear") {
  CHECK(step("RU 245") == 5);
  CHECK(step("RU 247.5") == 7.5);
}

// Worked out by hand from the definitions.
TEST_CASE("4 mm are 0.80 Mondopoint steps, 0.60 EU sizes and 0.94 UK half sizes") {
  const Millimetres change(4);
  CHECK(change / size_step(*parse_shoe_size("MP 245")) == Approx(0.80));
  CHECK(change / whole_size(SizeSystem::european) == Approx(0.60));
  CHECK(change / size_step(*parse_shoe_size("UK 6")) == Approx(0.94).epsilon(0.01));
}

// Trade sources that agree: child 1 … 13½, then adult 1; adult 0 = child 13.
TEST_CASE("the English sizes of children end at 13½, and adults begin at 1") {
  CHECK(next_larger(*parse_shoe_size("UK child 13½")) == *parse_shoe_size("UK 1"));
  CHECK(parse_shoe_size("UK 0").problem().hint == "write `UK child 13`");
}

// GB/T 43293 replaces a code of which a trade source says: length in cm = (code + 10) / 2, 40
// is 25.0.
TEST_CASE("the old Chinese code 40 is a foot of 250 mm") {
  CHECK(parse_shoe_size("CN 40").problem().hint == "write the length in mm: `CN 250`");
}

double stored(Unit unit) {
  double value = facts(unit).factor;
  for (int shift = facts(unit).shift; shift < 0; ++shift) {
    value /= 10;
  }
  return value;
}

// The inch: international yard and pound agreement of 1959. Minute, hour, day: SI brochure, 9th
// edition, table 8. The year of 365.25 days: the Julian year of the IAU's system of units. All from
// memory.
TEST_CASE("units are defined as their sources define them") {
  CHECK(stored(Unit::inch) == 25.4);
  CHECK(stored(Unit::centimetre) == 10);
  CHECK(stored(Unit::metre) == 1000);
  CHECK(stored(Unit::kilogram) == 1000);
  CHECK(stored(Unit::percent) == 0.01);
  CHECK(stored(Unit::minute) == 60);
  CHECK(stored(Unit::hour) == 60 * 60);
  CHECK(stored(Unit::day) == 24 * 60 * 60);
  CHECK(stored(Unit::week) == 7 * stored(Unit::day));
  CHECK(stored(Unit::year) == 365.25 * stored(Unit::day));
  CHECK(12 * stored(Unit::month) == stored(Unit::year));
  CHECK(stored(Unit::newton_metre_per_degree) == 1000 * stored(Unit::newton));
}

}  // namespace
}  // namespace heelrule
