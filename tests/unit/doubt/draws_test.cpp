#include "engine/doubt/draws.hpp"

#include <catch2/catch.hpp>
#include <cmath>

#include "tests/unit/doubt/doubted.hpp"

namespace heelrule {
namespace {

const std::string lengths = house(
    "  a: {ask: A, measure: mm, doubt: 2 mm}\n  b: {ask: B, measure: mm, doubt: 3 mm}\n",
    rule("a", "1", "bands: [{name: low, below: 100 mm, earns: 0}, {name: high, earns: 100 %}]") +
        rule("b", "1",
             "bands: [{name: low, below: 100 mm, earns: 0}, {name: high, earns: 100 %}]"));

struct Drawn {
  std::vector<double> a;
  std::vector<double> b;
};

Drawn draws(Sample sample, std::size_t count) {
  const Doubted house = doubted(lengths, "{a: 100 mm, b: 50 mm}");
  Block block(house.program);
  Drawn drawn;
  for (std::size_t first = 0; first < count; first += block_rows) {
    draw(house.doubt.readings, sample, first, block);
    drawn.a.insert(drawn.a.end(), block.column(0).begin(), block.column(0).end());
    drawn.b.insert(drawn.b.end(), block.column(1).begin(), block.column(1).end());
  }
  return drawn;
}

double mean_of(const std::vector<double>& values) {
  double sum = 0;
  for (const double value : values) {
    sum += value;
  }
  return sum / static_cast<double>(values.size());
}

double covariance(const std::vector<double>& a, const std::vector<double>& b) {
  const double mean_a = mean_of(a);
  const double mean_b = mean_of(b);
  double sum = 0;
  for (std::size_t i = 0; i < a.size(); ++i) {
    sum += (a[i] - mean_a) * (b[i] - mean_b);
  }
  return sum / static_cast<double>(a.size());
}

// 64,000 draws: the standard error of a mean is u/253, of a standard deviation u/358.
TEST_CASE("draws have the mean and the spread of their reading, and know nothing of each other") {
  const Drawn drawn = draws(Sample::first, 64'000);
  CHECK(mean_of(drawn.a) == Approx(100).margin(4 * 2 / 253.0));
  CHECK(mean_of(drawn.b) == Approx(50).margin(4 * 3 / 253.0));
  CHECK(std::sqrt(covariance(drawn.a, drawn.a)) == Approx(2).margin(4 * 2 / 358.0));
  CHECK(std::sqrt(covariance(drawn.b, drawn.b)) == Approx(3).margin(4 * 3 / 358.0));
  CHECK(covariance(drawn.a, drawn.b) / 6 == Approx(0).margin(4 / 253.0));
  const Drawn other = draws(Sample::second, 64'000);
  CHECK(covariance(drawn.a, other.a) / 4 == Approx(0).margin(4 / 253.0));
}

TEST_CASE("a draw depends on its number alone, not on what was drawn before it") {
  const Doubted house = doubted(lengths, "{a: 100 mm, b: 50 mm}");
  Block in_order(house.program);
  Block by_itself(house.program);
  for (const std::size_t first : {0U, 64U, 128U}) {
    draw(house.doubt.readings, Sample::first, first, in_order);
  }
  draw(house.doubt.readings, Sample::first, 128, by_itself);
  CHECK(in_order.column(0) == by_itself.column(0));
  CHECK(in_order.column(1) == by_itself.column(1));
}

}  // namespace
}  // namespace heelrule
