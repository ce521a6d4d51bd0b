// Many rows at once mean what each row means alone.
#include <catch2/catch.hpp>

#include "engine/scoring/block.hpp"
#include "engine/scoring/decide.hpp"
#include "engine/scoring/fill_row.hpp"
#include "engine/scoring/grade.hpp"
#include "engine/scoring/rows.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

// Evaluated, with an inspection in each row.
Block random_block(const Program& program, Dice& dice) {
  Block block(program);
  for (std::size_t row = 0; row < block_rows; ++row) {
    fill_row(program, random_inspection(program.rules, dice), block, row);
  }
  evaluate(program, block);
  return block;
}

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
    Block block = random_block(program, dice);
    block.clear();
    evaluate(program, block);
    const Verdict nothing = grade(program, Inspection{});
    for (std::size_t row = 0; row < block_rows; ++row) {
      REQUIRE((decide(program, block, row) == nothing));
    }
  }
}

// The sets of rows of one contribution, as the verdicts have them.
struct Sets {
  Rows without_pass = 0;
  Rows not_seen = 0;
  Rows applies = 0;
  Rows with_lack = 0;
};

Sets sets_of(const std::vector<Verdict>& verdicts, std::size_t contribution) {
  Sets sets;
  for (std::size_t row = 0; row < verdicts.size(); ++row) {
    const Finding& found = verdicts[row].findings[contribution];
    const Rows bit = Rows{1} << row;
    if (found.status == Status::does_not_apply) {
      continue;
    }
    sets.without_pass |= found.status == Status::pass ? 0 : bit;
    sets.not_seen |= found.status == Status::not_seen ? bit : 0;
    if (!found.whether_it_applies_is_open) {
      sets.applies |= bit;
      for (const SideReading& reading : found.readings) {
        sets.with_lack |= reading.credit < full_credit ? bit : 0;
      }
    }
  }
  return sets;
}

TEST_CASE("sets of rows are those of the verdicts") {
  Dice dice(67);
  for (int i = 0; i < 300; ++i) {
    const Program program = random_program(dice);
    Block block = random_block(program, dice);
    std::vector<Verdict> verdicts;
    for (std::size_t row = 0; row < block_rows; ++row) {
      verdicts.push_back(decide(program, block, row));
    }
    for (std::size_t at = 0; at < program.contributions.size(); ++at) {
      const Contribution& contribution = program.contributions[at];
      const Sets sets = sets_of(verdicts, at);
      INFO(outline(program.rules));
      REQUIRE(rows_without_pass(contribution, block) == sets.without_pass);
      REQUIRE(rows_not_seen(contribution, block) == sets.not_seen);
      REQUIRE(rows_that_apply(contribution, block) == sets.applies);
      REQUIRE(rows_with_lack(contribution, block) == sets.with_lack);
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
    decide(program, block, 1, used);
    REQUIRE((used == decide(program, block, 1)));
  }
}

}  // namespace
}  // namespace heelrule
