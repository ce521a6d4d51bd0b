// The columns of a batch, and how sides are joined in whole rule sets.
#include <catch2/catch.hpp>

#include "engine/scoring/block.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

std::string two_sides(const std::string& how) {
  return one_rule(
      "[{name: short, below: 6 mm, earns: 0}, {name: close, below: 10 mm, earns: 50 %}, "
      "{name: right, earns: 100 %}]",
      "    sides: " + how + "\n");
}

Verdict verdict(const std::string& how, const std::string& left, const std::string& right) {
  return graded(two_sides(how), one_record(left, right)).verdict;
}

TEST_CASE("`mean` takes the mean of both sides, and needs both") {
  const Verdict both = verdict("mean", "5 mm", "12 mm");
  CHECK(both.findings[0].credit == 500'000);
  CHECK(both.findings[0].status == Status::part);
  CHECK(*both.score.points() == 50);
  CHECK(verdict("mean", "5 mm", "not seen").findings[0].status == Status::not_seen);
  CHECK(verdict("mean", "5 mm", "4 mm").findings[0].status == Status::fail);
}

TEST_CASE("`each` makes two findings of half the weight") {
  const Verdict v = verdict("each", "5 mm", "12 mm");
  REQUIRE(v.findings.size() == 2);
  CHECK(v.findings[0].side == Side::left);
  CHECK(v.findings[0].status == Status::fail);
  CHECK(v.findings[0].weight == 2'000);
  CHECK(v.findings[1].side == Side::right);
  CHECK(v.findings[1].status == Status::pass);
  CHECK(*v.score.points() == 50);
}

TEST_CASE("of `each`, the side that was not seen stays open alone") {
  const Verdict v = verdict("each", "not seen", "12 mm");
  CHECK(v.findings[0].missing == std::vector<Missing>{{0, Side::left}});
  CHECK(v.findings[1].status == Status::pass);
  CHECK(*v.score.points() == 100);
  CHECK(v.score.lowest_points() == 50);
}

TEST_CASE("half of the smallest weight is still counted exactly") {
  std::string rules = two_sides("each");
  rules.replace(rules.find("weight: 4"), 9, "weight: 0.001");
  const Verdict v = graded(rules, one_record("5 mm", "7 mm")).verdict;
  CHECK(v.findings[0].weight == 0.5);
  CHECK(v.score.earned == 0.5 * 500'000);
  CHECK(*v.score.points() == 25);
}

TEST_CASE("a block knows each row by itself, and nothing is seen before it is filled") {
  const Graded sample = graded(two_sides("worse"), one_record("5 mm", "12 mm"));
  Block block(sample.program);
  REQUIRE(sample.program.inputs.size() == 2);
  block.column(0)[1] = 12;
  block.column(1)[1] = 8;
  block.column(0)[63] = 3;
  evaluate(sample.program, block);
  CHECK(block.outcome(0) == Outcome{0, 0, 4'000, 0, 0, 0});
  CHECK(block.outcome(1) == Outcome{4'000 * 500'000.0, 4'000, 0, 0, 0, 0});
  CHECK(block.outcome(63) == Outcome{0, 4'000, 0, 0, 0, 0});
}

}  // namespace
}  // namespace heelrule
