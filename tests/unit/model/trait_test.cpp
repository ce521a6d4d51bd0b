#include "engine/model/trait.hpp"

#include <catch2/catch.hpp>
#include <vector>

namespace heelrule {
namespace {

Trait heel_counter() {
  Trait trait;
  trait.name = "heel_counter";
  trait.kind = ScaleKind{{{{"soft", {}}, {}}, {{"firm", {}}, {}}}, {}};
  return trait;
}

TEST_CASE("a level is found by its name, and a wrong one is told with what is near or known") {
  CHECK(*find_level(heel_counter(), "firm") == 1);
  CHECK(find_level(heel_counter(), "frm").problem() ==
        Problem{"`heel_counter` has no level `frm`", "did you mean `firm`?"});
  CHECK(find_level(heel_counter(), "creased").problem() ==
        Problem{"`heel_counter` has no level `creased`", "its levels are `soft`, `firm`"});
}

TEST_CASE("a value with sides is found on the left and on the right, and any other on none") {
  const auto sides = [](bool has_sides) {
    const auto found = sides_of(has_sides);
    return std::vector<Side>(found.begin(), found.end());
  };
  CHECK(sides(true) == std::vector{Side::left, Side::right});
  CHECK(sides(false) == std::vector{Side::none});
}

}  // namespace
}  // namespace heelrule
