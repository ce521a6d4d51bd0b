// What a survey's feet are told to ask for, in five systems. The feet are those of
// ansur_size_counts_test.cpp: 404 adults of ANSUR II, right foot, standing, whole mm.
//
// The counts were worked out apart from this program, by a script over the same file, in exact
// fractions: Mondopoint as 5 · floor((mm + 2) / 5), EU as ceil(2 · (3/2 · cm + 2) - 1/2) / 2, UK as
// the row of the table of ISO/TS 19407 (secondary source) up to half way to the next, sizes that it
// passes over standing half way between two rows; US M is one more, US W two more.
#include <catch2/catch.hpp>
#include <fstream>
#include <map>

#include "engine/fitting/shoe_advice.hpp"
#include "engine/quantity/decimal.hpp"
#include "tests/unit/fitting/two_feet.hpp"

namespace heelrule {
namespace {

constexpr ToeWindow adult{Millimetres(6), Millimetres(10), Millimetres(15)};

using Counts = std::map<double, int>;

// The feet of one gender, as (gender, foot length): first and fifth column.
std::vector<double> feet_of(std::string_view gender) {
  std::ifstream file(HEELRULE_TEST_DATA "/ansur2_foot_sample.csv");
  std::string line;
  std::vector<double> feet;
  while (std::getline(file, line)) {
    if (!line.starts_with(gender)) {
      continue;
    }
    std::size_t at = 0;
    for (int column = 0; column < 4; ++column) {
      at = line.find(',', at) + 1;
    }
    const auto length = parse_decimal(line.substr(at, line.find(',', at) - at));
    REQUIRE(length);
    feet.push_back(scaled(*length));
  }
  return feet;
}

std::map<SizeSystem, Counts> asked_for(std::string_view gender) {
  std::map<SizeSystem, Counts> counts;
  for (const double foot : feet_of(gender)) {
    const ShoeAdvice advice = shoe_advice(two_feet(foot - 2, foot), adult, false);
    CHECK(advice.longer == Side::right);
    CHECK(advice.inside_least == Millimetres(foot + 10));
    CHECK(advice.inside_most == Millimetres(foot + 15));
    CHECK(advice.smaller->remedy == Remedy::one_pair);
    for (const SizeToAsk& ask : advice.sizes) {
      REQUIRE(ask.size);
      CHECK_FALSE(ask.reason.empty());
      ++counts[ask.system][ask.size->number()];
    }
  }
  return counts;
}

Counts shifted(const Counts& counts, double by) {
  Counts moved;
  for (const auto& [size, count] : counts) {
    moved[size + by] = count;
  }
  return moved;
}

TEST_CASE("205 men of ANSUR II ask for sizes as counted apart") {
  auto found = asked_for("Male");
  const Counts british{{5.5, 4},  {6, 3},  {6.5, 8},  {7, 16},  {7.5, 18},  {8, 10},
                       {8.5, 22}, {9, 26}, {9.5, 30}, {10, 29}, {10.5, 16}, {11, 7},
                       {11.5, 5}, {12, 6}, {12.5, 3}, {13, 1},  {13.5, 1}};
  CHECK(found[SizeSystem::british] == british);
  CHECK(found[SizeSystem::american_men] == shifted(british, 1));
  CHECK(found[SizeSystem::american_women] == shifted(british, 2));
  CHECK(found[SizeSystem::mondopoint] == Counts{{240, 4},
                                                {245, 3},
                                                {250, 8},
                                                {255, 16},
                                                {260, 21},
                                                {265, 29},
                                                {270, 26},
                                                {275, 30},
                                                {280, 29},
                                                {285, 16},
                                                {290, 11},
                                                {295, 7},
                                                {300, 3},
                                                {305, 1},
                                                {310, 1}});
}

TEST_CASE("199 women of ANSUR II ask for sizes as counted apart") {
  auto found = asked_for("Female");
  const Counts british{{3, 3},    {3.5, 4},  {4, 8},    {4.5, 17}, {5, 15},
                       {5.5, 17}, {6, 36},   {6.5, 30}, {7, 27},   {7.5, 14},
                       {8, 3},    {8.5, 10}, {9, 10},   {9.5, 4},  {10, 1}};
  CHECK(found[SizeSystem::british] == british);
  CHECK(found[SizeSystem::american_men] == shifted(british, 1));
  CHECK(found[SizeSystem::american_women] == shifted(british, 2));
  CHECK(found[SizeSystem::mondopoint] == Counts{{220, 3},
                                                {225, 4},
                                                {230, 8},
                                                {235, 27},
                                                {240, 22},
                                                {245, 36},
                                                {250, 30},
                                                {255, 27},
                                                {260, 15},
                                                {265, 12},
                                                {270, 10},
                                                {275, 4},
                                                {280, 1}});
}

TEST_CASE("404 adults of ANSUR II ask for EU sizes as counted apart") {
  Counts all = asked_for("Male")[SizeSystem::european];
  const Counts women = asked_for("Female")[SizeSystem::european];
  for (const auto& [size, count] : women) {
    all[size] += count;
  }
  CHECK(all == Counts{{35, 2},  {35.5, 2},  {36, 4},  {36.5, 6},  {37, 14}, {37.5, 19},
                      {38, 15}, {38.5, 23}, {39, 27}, {39.5, 21}, {40, 44}, {40.5, 20},
                      {41, 23}, {41.5, 29}, {42, 26}, {42.5, 17}, {43, 31}, {43.5, 23},
                      {44, 13}, {44.5, 16}, {45, 7},  {45.5, 6},  {46, 9},  {46.5, 3},
                      {47, 2},  {47.5, 1},  {49, 1}});
}

}  // namespace
}  // namespace heelrule
