#include "engine/quantity/unit.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

constexpr int unit_count = static_cast<int>(Unit::year) + 1;

TEST_CASE("each unit is found by the symbol that it is printed with") {
  for (int i = 1; i < unit_count; ++i) {
    const Unit unit = static_cast<Unit>(i);
    CAPTURE(facts(unit).symbol);
    CHECK(find_unit(facts(unit).symbol) == unit);
  }
}

TEST_CASE("every spelling names a unit, and none is given twice") {
  for (std::size_t i = 0; i < unit_spelling_count(); ++i) {
    CAPTURE(unit_spelling(i));
    CHECK(find_unit(unit_spelling(i)).has_value());
    for (std::size_t j = 0; j < i; ++j) {
      CHECK(unit_spelling(j) != unit_spelling(i));
    }
  }
}

TEST_CASE("symbols are read with their capitals") {
  CHECK(find_unit("N") == Unit::newton);
  CHECK_FALSE(find_unit("n"));
  CHECK_FALSE(find_unit("MM"));
  CHECK_FALSE(find_unit(""));
  CHECK_FALSE(find_unit("mm "));
}

TEST_CASE("dimensions multiply and divide by their exponents") {
  const Dimension length = facts(Unit::millimetre).dimension;
  const Dimension force = facts(Unit::newton).dimension;
  const Dimension angle = facts(Unit::degree).dimension;
  CHECK(length / length == Dimension{});
  CHECK(length * force / angle == facts(Unit::newton_metre_per_degree).dimension);
  CHECK(facts(Unit::percent).dimension == facts(Unit::count).dimension);
}

TEST_CASE("a dimension is said in words") {
  const Dimension length = facts(Unit::millimetre).dimension;
  const Dimension time = facts(Unit::day).dimension;
  CHECK(in_words(length) == "length");
  CHECK(in_words(length * length) == "length²");
  CHECK(in_words(length * length * length) == "length³");
  CHECK(in_words(length * length * length * length) == "length^4");
  CHECK(in_words(Dimension{}) == "number");
  CHECK(in_words(length / time) == "length/time");
  CHECK(in_words(Dimension{} / time) == "1/time");
  CHECK(in_words(facts(Unit::newton_metre_per_degree).dimension) == "bending stiffness");
}

TEST_CASE("a derived value is printed in the usual unit of its dimension, if that has a name") {
  CHECK(usual_unit(facts(Unit::inch).dimension) == Unit::millimetre);
  CHECK(usual_unit(facts(Unit::year).dimension) == Unit::day);
  CHECK(usual_unit(Dimension{}) == Unit::count);
  const Dimension length = facts(Unit::millimetre).dimension;
  CHECK_FALSE(usual_unit(length * length));
}

TEST_CASE("a stored value can be said in any unit of its dimension") {
  CHECK(in_unit(243.84, Unit::inch) == Approx(9.6).epsilon(1e-14));
  CHECK(in_unit(0.5, Unit::percent) == 50);
  CHECK(in_unit(300, Unit::newton_metre_per_degree) == 0.3);
  CHECK(in_unit(-7, Unit::degree) == -7);
}

}  // namespace
}  // namespace heelrule
