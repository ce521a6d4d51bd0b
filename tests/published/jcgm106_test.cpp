// Conformity under uncertainty, by the worked examples of JCGM 106:2012. Their inputs and printed
// results are from memory; each result was worked out again from its inputs.
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <utility>

#include "engine/doubt/conformity.hpp"

namespace heelrule {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

TEST_CASE("a limit above: the breakdown voltage of a Zener diode") {
  CHECK(chance_below(-5.47, 0.05, -5.40) == Approx(0.9192433407662273).epsilon(1e-12));
}

TEST_CASE("a limit below: the burst strength of a container") {
  CHECK(chance_within(509.7, 8.6, 490, infinity) == Approx(0.9890095473848222).epsilon(1e-12));
  CHECK(chance_within(507, 10, 490, infinity) == Approx(0.955435).epsilon(1e-6));
}

TEST_CASE("two limits: the viscosity of a motor oil, SAE 40") {
  CHECK(chance_within(13.6, 1.8, 12.5, 16.3) == Approx(0.6626297864953079).epsilon(1e-12));
}

TEST_CASE("a value at the limit conforms as often as not") {
  CHECK(chance_below(10, 0.5, 10) == 0.5);
}

// Table 1: how far inside a limit a value has to lie, in standard uncertainties.
TEST_CASE("the distances of table 1 give its chances") {
  for (const auto& [distance, chance] :
       {std::pair(0.8416212335729143, 0.80), std::pair(1.2815515655446004, 0.90),
        std::pair(1.6448536269514722, 0.95), std::pair(2.3263478740408408, 0.99),
        std::pair(3.090232306167813, 0.999)}) {
    CHECK(chance_below(-distance, 1, 0) == Approx(chance).epsilon(1e-12));
  }
}

// A guard band of twice the standard uncertainty leaves a risk of 2.275 % at its edge, and one of
// 1.6449 leaves 5 %.
TEST_CASE("the edge of a guard band carries the risk that it was made for") {
  const double uncertainty = 0.05;
  CHECK(1 - chance_below(10 - 2 * uncertainty, uncertainty, 10) ==
        Approx(0.02275013194817921).epsilon(1e-10));
  CHECK(1 - chance_below(10 - 1.6448536269514722 * uncertainty, uncertainty, 10) ==
        Approx(0.05).epsilon(1e-10));
}

// A radar gun that is good to 2 % and a limit of 100 km/h: from 106.587 km/h on it is 99.9 % sure
// that the limit was passed. There the uncertainty is 2 % of the reading.
TEST_CASE("from which reading on a speed limit was surely passed") {
  const double reading = 100 / (1 - 3.090232306167813 * 0.02);
  CHECK(reading == Approx(106.587).epsilon(1e-5));
  CHECK(1 - chance_below(reading, 0.02 * reading, 100) == Approx(0.999).epsilon(1e-9));
}

// Resistors of 1500 Ω made with a standard deviation of 0.12 Ω, in a window of 0.2 Ω either way;
// and one of them after a reading, where knowledge of the making and of the reading (0.04 Ω) are
// combined to a standard deviation of 0.037947 Ω.
TEST_CASE("resistors in their window, before and after they were read") {
  CHECK(chance_within(1500, 0.12, 1499.8, 1500.2) == Approx(0.904419).epsilon(1e-6));
  const double deviation = 0.12 * 0.04 / 0.12649110640673517;
  CHECK(deviation == Approx(0.037947).epsilon(1e-5));
  CHECK(chance_within(1500.162, deviation, 1499.8, 1500.2) == Approx(0.841680).epsilon(1e-5));
  CHECK(chance_within(1500.180, deviation, 1499.8, 1500.2) == Approx(0.700919).epsilon(1e-5));
  CHECK(chance_within(1500.090, deviation, 1499.8, 1500.2) == Approx(0.998127).epsilon(1e-5));
}

// Simpson's rule.
template <class Function>
double integral(double from, double to, const Function& of) {
  constexpr int halves = 400;
  const double step = (to - from) / (2 * halves);
  double sum = of(from) + of(to);
  for (int i = 1; i < 2 * halves; ++i) {
    sum += (i % 2 == 1 ? 4 : 2) * of(from + i * step);
  }
  return sum * step / 3;
}

// Of the same resistors all are read, with 0.04 Ω, and accepted or not (9.5). What share is
// accepted although it does not conform, and what share is rejected although it does; the inputs
// are those of the standard, the results were worked out with another program.
TEST_CASE("what simple and guarded acceptance let through, and what they throw away") {
  const double pi = 3.14159265358979323846;
  const auto made = [&](double truth) {
    const double standard = (truth - 1500) / 0.12;
    return std::exp(-standard * standard / 2) / (0.12 * std::sqrt(2 * pi));
  };
  const auto risks = [&](double guard) {
    const auto accepted = [&](double truth) {
      return chance_within(truth, 0.04, 1499.8 + guard, 1500.2 - guard);
    };
    const auto let_through = [&](double truth) { return made(truth) * accepted(truth); };
    const auto thrown_away = [&](double truth) { return made(truth) * (1 - accepted(truth)); };
    return std::pair(integral(1499, 1499.8, let_through) + integral(1500.2, 1501, let_through),
                     integral(1499.8, 1500.2, thrown_away));
  };
  CHECK(risks(0).first == Approx(0.018942).epsilon(1e-4));
  CHECK(risks(0).second == Approx(0.037208).epsilon(1e-4));
  CHECK(risks(0.02).first == Approx(0.009878).epsilon(1e-4));
  CHECK(risks(0.02).second == Approx(0.069027).epsilon(1e-4));
}

// The same in front of the toes, worked out with another program's normal distribution.
TEST_CASE("the space in front of the toes, in a window of 10 to 15 mm") {
  CHECK(chance_within(12, 1, 10, 15) == Approx(0.975900).epsilon(1e-6));
  CHECK(chance_within(12, 2, 10, 15) == Approx(0.774538).epsilon(1e-6));
  CHECK(chance_within(10, 1, 10, 15) == Approx(0.500000).epsilon(1e-6));
  CHECK(chance_within(11, 1, 10, 15) == Approx(0.841313).epsilon(1e-6));
  CHECK(chance_within(9, 1, 10, 15) == Approx(0.158655).epsilon(1e-5));
  CHECK(chance_within(12.5, 2.5, 10, 15) == Approx(0.682689).epsilon(1e-6));
  CHECK(chance_within(17, 2, 10, 20) == Approx(0.932960).epsilon(1e-6));
  CHECK(chance_within(11.645, 1, 10, 20) == Approx(0.950015).epsilon(1e-6));
}

TEST_CASE("left and right differ by more than 4 mm, at 0.7 mm") {
  CHECK(1 - chance_below(4, 0.7, 4) == Approx(0.5));
  CHECK(1 - chance_below(5, 0.7, 4) == Approx(0.92344).epsilon(1e-5));
  CHECK(1 - chance_below(3, 0.7, 4) == Approx(0.07656).epsilon(1e-4));
}

}  // namespace
}  // namespace heelrule
