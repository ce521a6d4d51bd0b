// Many rows at once mean what each row means alone.
#include <catch2/catch.hpp>

#include "engine/scoring/block.hpp"
#include "engine/scoring/decide.hpp"
#include "engine/scoring/fill_row.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

TEST_CASE("a row of a full block has the verdict that it has alone, in any position") {
  Dice dice(64);
  for (int i = 0; i < 60; ++i) {
    const Program program = random_program(dice);
    std::vector<Inspection> inspections;
    std::vector<Verdict> alone;
    for (std::size_t row = 0; row < block_rows; ++row) {
      inspections.push_back(random_inspection(program.rules, dice));
      alone.push_back(grade(program, inspections.back()));
    }
    Block block(program);
    for (int turn = 0; turn < 3; ++turn) {
      std::vector<std::size_t> order(block_rows);
      for (std::size_t row = 0; row < block_rows; ++row) {
        order[row] = row;
      }
      dice.shuffle(order);
      for (std::size_t row = 0; row < block_rows; ++row) {
        fill_row(program, inspections[order[row]], block, row);
      }
      evaluate(program, block);
      for (std::size_t row = 0; row < block_rows; ++row) {
        INFO(outline(program.rules) << outline(program.rules, inspections[order[row]]));
        REQUIRE((decide(program, block, row) == alone[order[row]]));
      }
    }
  }
}

TEST_CASE("a block that is cleared remembers nothing of the rows that it held") {
  Dice dice(65);
  for (int i = 0; i < 200; ++i) {
    const Program program = random_program(dice);
    Block block(program);
    for (std::size_t row = 0; row < block_rows; ++row) {
      fill_row(program, random_inspection(program.rules, dice), block, row);
    }
    evaluate(program, block);
    block.clear();
    evaluate(program, block);
    const Verdict nothing = grade(program, Inspection{});
    for (std::size_t row = 0; row < block_rows; ++row) {
      REQUIRE((decide(program, block, row) == nothing));
    }
  }
}

TEST_CASE("a verdict written over another is as one written anew") {
  Dice dice(66);
  for (int i = 0; i < 300; ++i) {
    const Program program = random_program(dice);
    Block block(program);
    fill_row(program, random_inspection(program.rules, dice), block, 0);
    fill_row(program, random_inspection(program.rules, dice), block, 1);
    evaluate(program, block);
    Verdict used = decide(program, block, 0);
    decide(program, block, 1, Detail::full, used);
    REQUIRE((used == decide(program, block, 1)));
  }
}

}  // namespace
}  // namespace heelrule
