#include "engine/quantity/plain_quantity.hpp"

#include <catch2/catch.hpp>
#include <string>

#include "engine/quantity/quantity.hpp"
#include "tests/laws/dice.hpp"

namespace heelrule {
namespace {

TEST_CASE("a number with its unit is read without looking any closer") {
  CHECK(plain_quantity("243.5 mm", Unit::millimetre) == 243.5);
  CHECK(plain_quantity("243.5mm", Unit::millimetre) == 243.5);
  CHECK(plain_quantity("7°", Unit::degree) == 7.0);
  CHECK(plain_quantity("0.3 N·m/°", Unit::newton_metre_per_degree) == 300.0);
  CHECK(plain_quantity("12", Unit::count) == 12.0);
}

TEST_CASE("what needs a closer look is left alone") {
  for (const char* text :
       {"", "mm", "243", "243.5 cm", "243.5  mm", "243,5 mm", "-4 mm", "+4 mm", ".5 mm", "5. mm",
        "1e2 mm", "007 mm", "1.2.3 mm", "243.5 mm ", " 243.5 mm", "1234567890123456 mm"}) {
    CAPTURE(text);
    CHECK_FALSE(plain_quantity(text, Unit::millimetre).has_value());
  }
  CHECK_FALSE(plain_quantity("12 ", Unit::count).has_value());
}

TEST_CASE("a number alone is read where its unit is said elsewhere") {
  CHECK(plain_quantity_without_symbol("24.6", Unit::centimetre) == 246.0);
  CHECK_FALSE(plain_quantity_without_symbol("24.6 cm", Unit::centimetre).has_value());
}

// A text of digits with a point, blanks and units, some of it sound.
std::string random_reading(Dice& dice) {
  static const std::vector<std::string> units{"mm", "cm", "in", "°", "g", "%", "N·m/°", "", "m"};
  std::string text;
  const std::size_t digits = 1 + dice.below(17);
  for (std::size_t i = 0; i < digits; ++i) {
    text += static_cast<char>('0' + dice.below(dice.one_in(2) ? 10 : 2));
    if (dice.one_in(5)) {
      text += '.';
    }
  }
  return text + (dice.one_in(2) ? " " : "") + dice.pick(units);
}

TEST_CASE("what is read quickly is what is read with care, to the last bit") {
  Dice dice(243);
  std::size_t read = 0;
  for (int i = 0; i < 200'000; ++i) {
    const std::string text = random_reading(dice);
    const auto unit = static_cast<Unit>(dice.below(static_cast<std::size_t>(Unit::year) + 1));
    const auto quick = plain_quantity(text, unit);
    if (!quick) {
      continue;
    }
    ++read;
    CAPTURE(text);
    const auto careful = parse_quantity(text);
    REQUIRE(careful);
    REQUIRE(careful->unit == unit);
    REQUIRE(careful->stored == *quick);
  }
  CHECK(read > 3'000);
}

}  // namespace
}  // namespace heelrule
