#include "engine/drawing/chance_bar.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

const ChanceBar bar{
    "chances",
    "How likely each grade is",
    {{0.25, "poor 25 %", false}, {0, "fair 0 %", false}, {0.75, "good 75 %", true}}};

TEST_CASE("each outcome takes its share of the bar") {
  const std::string picture = draw(bar);
  CHECK(holds(picture, R"(<rect class="part" x="0%")"));
  CHECK(holds(picture, R"(width="25%")"));
  CHECK(holds(picture, R"(<rect class="part chosen" x="25%")"));
  CHECK(holds(picture, R"(width="75%")"));
}

TEST_CASE("an outcome of no chance is left out, and the rest is said in words") {
  const std::string picture = draw(bar);
  CHECK(!holds(picture, "fair"));
  CHECK(holds(picture, ">poor 25 %; good 75 %.</desc>"));
  CHECK(holds(picture, ">How likely each grade is</title>"));
}

}  // namespace
}  // namespace heelrule
