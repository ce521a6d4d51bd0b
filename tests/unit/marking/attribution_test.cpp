#include "engine/marking/attribution.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <numeric>

#include "engine/quantity/random_sequence.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/unit/marking/marked.hpp"

namespace heelrule {
namespace {

// What each player adds to those before, over every order, one by one.
std::vector<double> over_all_orders(std::size_t players, const std::vector<double>& worth) {
  std::vector<std::size_t> order(players);
  std::iota(order.begin(), order.end(), 0);
  std::vector<double> values(players, 0);
  double orders = 0;
  do {
    std::size_t group = 0;
    for (const std::size_t player : order) {
      const std::size_t with = group | std::size_t{1} << player;
      values[player] += worth[with] - worth[group];
      group = with;
    }
    orders += 1;
  } while (std::next_permutation(order.begin(), order.end()));
  for (double& value : values) {
    value /= orders;
  }
  return values;
}

TEST_CASE("Shapley values are the mean over all orders, add up, and give a null player nothing") {
  RandomSequence random(7);
  for (std::size_t players = 1; players <= 6; ++players) {
    std::vector<double> worth(std::size_t{1} << players);
    for (double& one : worth) {
      one = 100 * random.share();
    }
    // The first player adds nothing to anybody.
    for (std::size_t group = 0; group < worth.size(); group += 2) {
      worth[group + 1] = worth[group];
    }
    const std::vector<double> values = shapley_values(players, worth);
    const std::vector<double> expected = over_all_orders(players, worth);
    for (std::size_t i = 0; i < players; ++i) {
      CHECK(values[i] == Approx(expected[i]).margin(1e-9));
    }
    CHECK(std::accumulate(values.begin(), values.end(), 0.0) ==
          Approx(worth.back() - worth.front()).margin(1e-9));
    CHECK(values[0] == Approx(0).margin(1e-12));
  }
  CHECK(shapley_values(0, {5}).empty());
}

TEST_CASE("players who add the same to everybody get the same") {
  // Worth by how many of players 0 and 1 are in, and by player 2.
  const std::vector<double> worth{0, 3, 3, 10, 1, 5, 5, 17};
  const std::vector<double> values = shapley_values(3, worth);
  CHECK(values[0] == Approx(values[1]));
}

const std::string bench = house(
    "  length: {ask: Length, measure: mm, per: shoe}\n"
    "  insole: {ask: Insole, scale: [broken, flat, springy]}\n"
    "  dry: {ask: Dry, answer: yes or no}\n"
    "  label: {ask: Label, choice: [red, blue]}\n",
    rule("length", "4",
         "bands: [{name: short, below: 250 mm, earns: 0}, {name: right, earns: 100 %}]") +
        rule("insole", "3", "levels: {broken: 0, flat: 50 %, springy: 100 %}") +
        rule("dry", "1", "levels: {yes: 100 %, no: 0}"));

Attribution between(const std::string& reference, const std::string& record) {
  const Program program = graded(bench, "inspection: {rules: house}\nfound: {}\n").program;
  return attribute(program, recorded(bench, "found: " + reference),
                   recorded(bench, "found: " + record));
}

TEST_CASE("where nothing changes the weight, a share is what the trait itself earns") {
  const Attribution found = between("{length: 251 mm, insole: flat, dry: no, label: red}",
                                    "{length: 240 mm, insole: springy, dry: no, label: blue}");
  CHECK(found.reference_points == Approx(100 * 5.5 / 8));
  CHECK(found.record_points == Approx(100 * 3.0 / 8));
  REQUIRE(found.shares.size() == 2);
  CHECK(found.shares[0] == ScoreShare{{0}, std::nullopt, -50});
  CHECK(found.shares[1] == ScoreShare{{1}, std::nullopt, 18.75});
  CHECK(!found.by_section);
}

TEST_CASE("a trait that was not seen has a share too, and all add up") {
  const Attribution found =
      between("{length: 251 mm, insole: broken, dry: yes}", "{length: 240 mm, insole: not seen}");
  double sum = 0;
  for (const ScoreShare& share : found.shares) {
    sum += share.points;
  }
  CHECK(found.shares.size() == 3);
  CHECK(found.record_points == 0);
  CHECK(sum == Approx(found.record_points - found.reference_points).epsilon(1e-12));
}

TEST_CASE("records that say the same have no shares") {
  CHECK(between("{length: 251 mm, label: red}", "{length: 251 mm, label: blue}").shares.empty());
}

// Fourteen yes-or-no traits over two sections.
std::string many() {
  std::string rules = "title: House\nsections: {fit: {title: Fit}, wear: {title: Wear}}\ntraits:\n";
  for (int i = 0; i < 14; ++i) {
    rules += fmt::format("  t{}: {{ask: Question {}, answer: yes or no}}\n", i, i);
  }
  rules += "rules:\n";
  for (int i = 0; i < 14; ++i) {
    rules += fmt::format(
        "  t{}: {{section: {}, weight: {}, reads: t{}, levels: {{yes: 100 %, no: 0}}, because: It "
        "has to, source: common practice}}\n",
        i, i % 2 == 0 ? "fit" : "wear", i + 1, i);
  }
  return rules + "grades: {sound: {from: 80, means: Keep.}, unfit: {from: 0, means: Leave.}}\n";
}

TEST_CASE("beyond twelve traits those of a section go together, and still add up") {
  std::string yes = "found: {";
  std::string no = "found: {";
  for (int i = 0; i < 14; ++i) {
    yes += fmt::format("t{}: yes, ", i);
    no += i == 13 ? std::string() : fmt::format("t{}: no, ", i);
  }
  const std::string rules = many();
  const Program program = graded(rules, "inspection: {rules: house}\nfound: {}\n").program;
  const Attribution found =
      attribute(program, recorded(rules, yes + "}"), recorded(rules, no + "}"));
  CHECK(found.by_section);
  REQUIRE(found.shares.size() == 2);
  CHECK(found.shares[0].traits.size() == 7);
  CHECK(found.shares[0].section.has_value());
  CHECK(found.shares[0].points + found.shares[1].points == Approx(-100).epsilon(1e-12));
  // Both sections by hand: 49 of 105 weight in the first, and 42 of the 91 that remain, of which
  // the second was in part not seen.
  const double first_alone = 100 * (56.0 / 105) - 100;
  const double first_last = 0 - 100 * (49.0 / 91);
  CHECK(found.shares[0].section == 0U);
  CHECK(found.shares[0].points == Approx((first_alone + first_last) / 2));
}

}  // namespace
}  // namespace heelrule
