#include "engine/doubt/draws.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <thread>
#include <vector>

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

// Blocks dealt out to so many threads, each with a block of its own, and put together in order.
std::vector<Column> drawn_by(std::size_t threads) {
  const Doubted house = doubted(lengths, "{a: 100 mm, b: 50 mm}");
  std::vector<Column> drawn(50);
  const auto work = [&](std::size_t thread) {
    Block block(house.program);
    for (std::size_t i = thread; i < drawn.size(); i += threads) {
      draw(house.doubt.readings, Sample::first, i * block_rows, block);
      drawn[i] = block.column(1);
    }
  };
  std::vector<std::thread> all;
  for (std::size_t thread = 0; thread < threads; ++thread) {
    all.emplace_back(work, thread);
  }
  for (std::thread& one : all) {
    one.join();
  }
  return drawn;
}

TEST_CASE("draws are the same bytes with any number of threads") {
  const std::vector<Column> by_one = drawn_by(1);
  CHECK(by_one[0] != by_one[1]);
  CHECK(drawn_by(2) == by_one);
  CHECK(drawn_by(7) == by_one);
}

TEST_CASE("doubt is the same when many threads ask for it at once") {
  const Doubted house = doubted(lengths, "{a: 100 mm, b: 101 mm}");
  for (const std::size_t threads : {1U, 2U, 7U}) {
    std::vector<Doubt> found(threads);
    std::vector<std::thread> all;
    for (Doubt& one : found) {
      all.emplace_back([&] { one = doubt_of(house.program, house.inspection, house.verdict); });
    }
    for (std::thread& one : all) {
      one.join();
    }
    for (const Doubt& one : found) {
      CHECK(one == house.doubt);
    }
  }
}

}  // namespace
}  // namespace heelrule
