#include "engine/scoring/fill_row.hpp"

#include <catch2/catch.hpp>
#include <cmath>

#include "engine/quantity/size_conversion.hpp"

namespace heelrule {
namespace {

Input input(Facet facet, FibreGroup fibres = {}) { return {0, facet, fibres}; }

TEST_CASE("repeated readings count as their mean, settled") {
  const Readings readings{{246, 247, 246}, Unit::millimetre, {}, false};
  CHECK(number_of(readings, input(Facet::value)) == 246.333333333);
}

TEST_CASE("a level counts as its place on the scale, and an answer as 1 or 0") {
  CHECK(number_of(LevelSeen{2}, input(Facet::value)) == 2);
  CHECK(number_of(Answer{true}, input(Facet::value)) == 1);
  CHECK(number_of(Answer{false}, input(Facet::value)) == 0);
}

TEST_CASE("what was not seen has no number") {
  for (const Facet facet : {Facet::value, Facet::share, Facet::moisture, Facet::shortest_foot}) {
    CHECK(std::isnan(number_of(NotSeen{"wet"}, input(facet))));
  }
}

TEST_CASE("a fibre content gives a share and a moisture") {
  const std::vector<NamedShare> label{{"cotton", {0.8, Unit::percent}},
                                      {"polyamide filament", {0.17, Unit::percent}},
                                      {"elastane", {0.03, Unit::percent}}};
  const auto content = fibre_content(label);
  REQUIRE(content);
  CHECK(number_of(*content, input(Facet::share, FibreGroup(Fibre::cotton))) == 0.8);
  CHECK(number_of(*content, input(Facet::share, FibreGroup(Fibre::silk))) == 0);
  CHECK(number_of(*content, input(Facet::moisture)) == 0.078225);
}

TEST_CASE("a marked size gives the feet that it is made for") {
  const auto size = parse_shoe_size("MP 250");
  REQUIRE(size);
  CHECK(number_of(*size, input(Facet::longest_foot)) == longest_foot(*size)->value());
  CHECK(number_of(*size, input(Facet::shortest_foot)) == shortest_foot(*size)->value());
  const auto range = parse_sock_range("24-26 cm");
  REQUIRE(range);
  CHECK(number_of(*range, input(Facet::shortest_foot)) == 240);
  CHECK(number_of(*range, input(Facet::longest_foot)) == 260);
}

}  // namespace
}  // namespace heelrule
