#include "engine/quantity/size_conversion.hpp"

#include <catch2/catch.hpp>
#include <limits>

namespace heelrule {
namespace {

ShoeSize marked(std::string_view text) { return *parse_shoe_size(text); }

FootRange feet(std::string_view text, Wearer wearer = Wearer::adult) {
  const auto range = feet_of(marked(text), wearer);
  INFO(text << ": " << range.problem().message);
  REQUIRE(range);
  return *range;
}

std::string fitting(SizeSystem system, double foot, Wearer wearer = Wearer::adult) {
  const auto found = size_for(system, Millimetres(foot), wearer);
  return found ? show(*found) : found.problem().message;
}

TEST_CASE("a size is made for the feet from half way below to half way above") {
  CHECK(feet("MP 245") == FootRange{Millimetres(242.5), Millimetres(247.5)});
  CHECK(feet("MP 247.5") == FootRange{Millimetres(243.75), Millimetres(251.25)});
  CHECK(feet("JP 24.5") == feet("MP 245"));
  CHECK(feet("CN 245") == feet("MP 245"));
  CHECK(feet("RU 245") == feet("MP 245"));
  CHECK(feet("EU 39") == FootRange{Millimetres(245), Millimetres(745.0 / 3)});
  CHECK(feet("UK 6.5") == FootRange{Millimetres(247.5), Millimetres(252.5)});
}

TEST_CASE("a size that the table passes over lies half way between its rows") {
  CHECK(*nominal_foot(marked("UK 8"), Wearer::adult) == Millimetres(262.5));
  CHECK(feet("UK 8") == FootRange{Millimetres(261.25), Millimetres(263.75)});
  CHECK(*nominal_foot(marked("EU 32"), Wearer::child) == Millimetres(197.5));
}

TEST_CASE("a foot half way between two sizes gets the smaller") {
  CHECK(fitting(SizeSystem::mondopoint, 247.5) == "MP 245");
  CHECK(fitting(SizeSystem::mondopoint, 247.6) == "MP 250");
  CHECK(fitting(SizeSystem::european, 245) == "EU 38.5");
  CHECK(fitting(SizeSystem::european, 245.1) == "EU 39");
  CHECK(fitting(SizeSystem::british, 247.5) == "UK 6");
  CHECK(fitting(SizeSystem::japanese, 252.5) == "JP 25.0");
}

TEST_CASE("the dust of a mean does not move a foot into the next size") {
  const double mean = (244.8 + 245.1 + 245.1) / 3;
  CHECK(fitting(SizeSystem::european, mean) == "EU 38.5");
  CHECK(fitting(SizeSystem::european, 245.00000000000003) == "EU 38.5");
}

TEST_CASE("a size is asked for by exactly the feet that it is made for") {
  const auto agrees = [](SizeSystem system, Wearer wearer, double from, double to) {
    for (int step = 0; from + step * 0.25 <= to; ++step) {
      const double foot = from + step * 0.25;
      const auto found = size_for(system, Millimetres(foot), wearer);
      CAPTURE(foot, found.problem().message);
      REQUIRE(found);
      const auto range = feet_of(*found, wearer);
      REQUIRE(range);
      CHECK(range->holds(Millimetres(foot)));
      CHECK((range->shortest < Millimetres(foot) || foot == from));
    }
  };
  agrees(SizeSystem::mondopoint, Wearer::adult, 80, 400);
  agrees(SizeSystem::japanese, Wearer::child, 80, 400);
  agrees(SizeSystem::european, Wearer::adult, 80, 400);
  agrees(SizeSystem::european, Wearer::child, 117.5, 227.5);
  agrees(SizeSystem::british, Wearer::adult, 207.5, 322.5);
  agrees(SizeSystem::american_men, Wearer::adult, 207.5, 322.5);
  agrees(SizeSystem::american_women, Wearer::adult, 207.5, 322.5);
}

TEST_CASE("each size ends where the next begins") {
  for (ShoeSize here = marked("UK 1.5"); here != marked("UK 15"); here = *next_larger(here)) {
    CHECK(feet_of(here, Wearer::adult)->longest ==
          feet_of(*next_larger(here), Wearer::adult)->shortest);
  }
  for (ShoeSize here = marked("EU 14"); here != marked("EU 62"); here = *next_larger(here)) {
    CHECK(feet_of(here, Wearer::adult)->longest ==
          feet_of(*next_larger(here), Wearer::adult)->shortest);
  }
}

TEST_CASE("the same Paris points mean another foot for a child") {
  CHECK(nominal_foot(marked("EU 34"), Wearer::adult)->value() == Approx(213.333).epsilon(1e-5));
  CHECK(*nominal_foot(marked("EU 34"), Wearer::child) == Millimetres(210));
}

TEST_CASE("when nobody says, sizes below the table for adults are a child's") {
  CHECK(usual_wearer(marked("EU 33")) == Wearer::child);
  CHECK(usual_wearer(marked("EU 33.5")) == Wearer::adult);
  CHECK(usual_wearer(marked("UK child 13.5")) == Wearer::child);
  CHECK(usual_wearer(marked("UK 1")) == Wearer::adult);
  CHECK(usual_wearer(marked("US child 1")) == Wearer::child);
  CHECK(usual_wearer(marked("US youth 1")) == Wearer::child);
  CHECK(usual_wearer(marked("MP 150")) == Wearer::adult);
  CHECK(shortest_foot(marked("EU 30")) == feet("EU 30", Wearer::child).shortest);
  CHECK(longest_foot(marked("EU 40")) == feet("EU 40").longest);
}

TEST_CASE("a column that nothing confirms is not guessed") {
  const Problem british{
      "UK sizes of children are not turned into foot lengths here, nor back",
      "no source confirms their table: use EU or Mondopoint, and measure the inside of the shoe"};
  CHECK(feet_of(marked("UK child 8"), Wearer::child).problem() == british);
  CHECK(feet_of(marked("UK 3"), Wearer::child).problem() == british);
  CHECK(size_for(SizeSystem::british_child, Millimetres(180), Wearer::child).problem() == british);
  CHECK(nominal_foot(marked("US youth 1"), Wearer::child).problem().message ==
        "US sizes of children are not turned into foot lengths here, nor back");
  CHECK_FALSE(shortest_foot(marked("UK child 8")));
  CHECK_FALSE(longest_foot(marked("US child 8")));
}

TEST_CASE("beyond the ends of a table its ends are named") {
  CHECK(feet_of(marked("UK 15.5"), Wearer::adult).problem() ==
        Problem{"`UK 15.5` is outside the table of ISO 19407 for adults",
                "it runs from UK 1.5 to UK 15"});
  CHECK(feet_of(marked("US W 3"), Wearer::adult).problem().hint ==
        "it runs from US W 3.5 to US W 17");
  CHECK(feet_of(marked("EU 38"), Wearer::child).problem().hint == "it runs from EU 19.5 to EU 36");
  CHECK(feet_of(marked("EU 13"), Wearer::adult).problem() ==
        Problem{"`EU 13` is outside the conversion for adults", "it runs from EU 14 to EU 62"});
  CHECK(size_for(SizeSystem::british, Millimetres(203), Wearer::adult).problem() ==
        Problem{"a foot of 203 mm is outside the table of ISO 19407 for adults",
                "it runs from UK 1.5 to UK 15, 210 mm to 320 mm"});
  CHECK(fitting(SizeSystem::british, 207.4).starts_with("a foot of 207.4 mm is outside"));
  CHECK(fitting(SizeSystem::british, 207.5) == "UK 1.5");
  CHECK(fitting(SizeSystem::british, 322.5) == "UK 15");
  CHECK(fitting(SizeSystem::british, 322.6).starts_with("a foot of 322.6 mm is outside"));
  CHECK(fitting(SizeSystem::european, 117.5, Wearer::child) == "EU 19.5");
  CHECK(fitting(SizeSystem::european, 227.6, Wearer::child)
            .starts_with("a foot of 227.6 mm is outside"));
}

TEST_CASE("no shoe is made for an absurd foot") {
  CHECK(size_for(SizeSystem::european, Millimetres(-245), Wearer::adult).problem() ==
        Problem{"no shoe is made for a foot of -245 mm",
                "measure again: feet are 80 mm to 400 mm long"});
  for (const double foot : {0.0, 79.9, 400.1, 1e300, std::numeric_limits<double>::infinity(),
                            std::numeric_limits<double>::quiet_NaN()}) {
    for (int i = 0; i <= static_cast<int>(SizeSystem::russian); ++i) {
      CHECK_FALSE(size_for(static_cast<SizeSystem>(i), Millimetres(foot), Wearer::adult));
      CHECK_FALSE(size_for(static_cast<SizeSystem>(i), Millimetres(foot), Wearer::child));
    }
  }
}

}  // namespace
}  // namespace heelrule
