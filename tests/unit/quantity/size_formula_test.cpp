#include "engine/quantity/size_formula.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("the answer is explained by its formula") {
  const auto explained = [](SizeSystem system, double foot, Wearer wearer = Wearer::adult) {
    return explain_size(system, Millimetres(foot), wearer);
  };
  CHECK(explained(SizeSystem::european, 245) ==
        "EU = 1.5 · foot length in cm + 2 = 38.75: EU 38.5");
  CHECK(explained(SizeSystem::british, 245) ==
        "UK = 3 · foot length in inches - 23 = 5.94; by the table of ISO 19407: UK 6");
  CHECK(explained(SizeSystem::american_men, 245) ==
        "US M = 3 · foot length in inches - 22 = 6.94; by the table of ISO 19407: US M 7");
  CHECK(explained(SizeSystem::european, 200, Wearer::child) ==
        "EU = 1.62 · foot length in cm = 32.4; by the table of ISO 19407: EU 32.5");
  CHECK(explained(SizeSystem::mondopoint, 247) ==
        "MP = foot length in mm, to the nearest 5 mm: MP 245");
  CHECK(explained(SizeSystem::japanese, 247) ==
        "JP = foot length in cm, to the nearest 0.5 cm: JP 24.5");
  CHECK(explained(SizeSystem::british_child, 180, Wearer::child) ==
        "UK sizes of children are not turned into foot lengths here, nor back");
}

TEST_CASE("a formula is given only where one agrees with its table") {
  CHECK(size_by_formula(SizeSystem::european, Millimetres(250), Wearer::adult) == 39.5);
  CHECK_FALSE(size_by_formula(SizeSystem::british, Millimetres(180), Wearer::child));
  CHECK_FALSE(size_by_formula(SizeSystem::mondopoint, Millimetres(245), Wearer::adult));
}

TEST_CASE("a reason stands beside its size, and is empty where there is none") {
  CHECK(size_reason(SizeSystem::british, Millimetres(245), Wearer::adult) ==
        "3 · foot length in inches - 23 = 5.94; by the table of ISO 19407");
  CHECK(size_reason(SizeSystem::british_child, Millimetres(180), Wearer::child).empty());
}

}  // namespace
}  // namespace heelrule
