// How the feet of a survey spread over sizes. 404 adults of the anthropometric survey of US Army
// personnel of 2012 (ANSUR II): every 20th man, every 10th woman; foot length in whole mm, right
// foot, standing. US Government work, public domain. Soldiers only: no reference for clients.
//
// The counts were worked out apart from this program, by a script of a few lines over the same
// file: whole steps of 5 mm as 5 · floor((mm + 2) / 5), EU sizes as ceil(2 · (3/2 · cm + 2) - 1/2)
// / 2 in exact fractions.
#include <catch2/catch.hpp>
#include <fstream>
#include <map>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/size_conversion.hpp"

namespace heelrule {
namespace {

struct Soldier {
  std::string gender;
  double foot_length;
};

std::vector<std::string> cells_of(const std::string& line) {
  std::vector<std::string> cells(1);
  for (const char c : line) {
    if (c == ',') {
      cells.emplace_back();
    } else if (c != '\r') {
      cells.back() += c;
    }
  }
  return cells;
}

std::vector<Soldier> soldiers() {
  std::ifstream file(HEELRULE_TEST_DATA "/ansur2_foot_sample.csv");
  std::string line;
  REQUIRE(std::getline(file, line));
  const auto head = cells_of(line);
  REQUIRE(head.size() > 4);
  REQUIRE(head[0] == "gender");
  REQUIRE(head[4] == "footlength");
  std::vector<Soldier> all;
  while (std::getline(file, line)) {
    const auto cells = cells_of(line);
    const auto length = parse_decimal(cells[4]);
    REQUIRE(length);
    all.push_back({cells[0], scaled(*length)});
  }
  return all;
}

using Counts = std::map<double, int>;

Counts counts(SizeSystem system, std::string_view gender) {
  Counts found;
  for (const Soldier& soldier : soldiers()) {
    if (gender.empty() || soldier.gender == gender) {
      const auto size = size_for(system, Millimetres(soldier.foot_length), Wearer::adult);
      REQUIRE(size);
      ++found[size->number()];
    }
  }
  return found;
}

TEST_CASE("the feet of 205 men of ANSUR II spread over Mondopoint steps as counted apart") {
  CHECK(counts(SizeSystem::mondopoint, "Male") == Counts{{240, 4},
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

TEST_CASE("the feet of 199 women of ANSUR II spread over Mondopoint steps as counted apart") {
  CHECK(counts(SizeSystem::mondopoint, "Female") == Counts{{220, 3},
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

TEST_CASE("the feet of 404 adults of ANSUR II spread over EU half sizes as counted apart") {
  CHECK(counts(SizeSystem::european, "") ==
        Counts{{35, 2},    {35.5, 2},  {36, 4},    {36.5, 6},  {37, 14},   {37.5, 19}, {38, 15},
               {38.5, 23}, {39, 27},   {39.5, 21}, {40, 44},   {40.5, 20}, {41, 23},   {41.5, 29},
               {42, 26},   {42.5, 17}, {43, 31},   {43.5, 23}, {44, 13},   {44.5, 16}, {45, 7},
               {45.5, 6},  {46, 9},    {46.5, 3},  {47, 2},    {47.5, 1},  {49, 1}});
}

// The British column of ISO/TS 19407 has a row for every foot of the survey, so none is left
// without a size.
TEST_CASE("every adult of ANSUR II has a size in each system for adults") {
  int sizes = 0;
  for (const Soldier& soldier : soldiers()) {
    for (const SizeSystem system :
         {SizeSystem::mondopoint, SizeSystem::european, SizeSystem::british,
          SizeSystem::american_men, SizeSystem::american_women, SizeSystem::japanese,
          SizeSystem::chinese, SizeSystem::russian}) {
      const auto size = size_for(system, Millimetres(soldier.foot_length), Wearer::adult);
      REQUIRE(size);
      CHECK(feet_of(*size, Wearer::adult)->holds(Millimetres(soldier.foot_length)));
      ++sizes;
    }
  }
  CHECK(sizes == 404 * 8);
}

}  // namespace
}  // namespace heelrule
