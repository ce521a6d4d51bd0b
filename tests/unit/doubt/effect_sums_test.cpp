#include "engine/doubt/effect_sums.hpp"

#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "engine/quantity/random_stream.hpp"

namespace heelrule {
namespace {

using Inputs = std::array<double, 3>;

// The function of Ishigami and Homma (1990), with a = 7 and b = 0.1, of three inputs that are
// spread evenly from −π to π. Its variance and the parts of it are known in closed form (Saltelli
// and others, Sensitivity Analysis (2000), chapter 2; formulas from memory, and each is an integral
// that can be done on paper).
double ishigami(const Inputs& x) {
  const double sine = std::sin(x[1]);
  return std::sin(x[0]) + 7 * sine * sine + 0.1 * std::pow(x[2], 4) * std::sin(x[0]);
}

struct Known {
  Inputs first;
  Inputs total;
};

Known known_shares() {
  const double a = 7;
  const double b = 0.1;
  const double pi4 = std::pow(std::numbers::pi, 4);
  const double of_first = b * pi4 / 5 + b * b * pi4 * pi4 / 50 + 0.5;
  const double of_second = a * a / 8;
  const double of_first_and_third = 8 * b * b * pi4 * pi4 / 225;
  const double all = of_first + of_second + of_first_and_third;
  return {{of_first / all, of_second / all, 0},
          {(of_first + of_first_and_third) / all, of_second / all, of_first_and_third / all}};
}

TEST_CASE("the shares of Ishigami's function come out") {
  const Known known = known_shares();
  CHECK(known.first[0] == Approx(0.3139).margin(5e-5));  // as printed in many a paper
  CHECK(known.total[2] == Approx(0.2437).margin(5e-5));
  std::array<EffectSums, 3> sums;
  for (std::uint32_t i = 0; i < 100'000; ++i) {
    Inputs first{};
    Inputs second{};
    for (std::uint32_t k = 0; k < 3; ++k) {
      const RandomWords words = random_words({i, k, 0, 0}, {5, 5});
      first[k] = std::numbers::pi * (2 * open_fraction(words[0]) - 1);
      second[k] = std::numbers::pi * (2 * open_fraction(words[1]) - 1);
    }
    for (std::size_t k = 0; k < 3; ++k) {
      Inputs mixed = first;
      mixed[k] = second[k];
      sums[k].add(ishigami(first), ishigami(second), ishigami(mixed));
    }
  }
  for (std::size_t k = 0; k < 3; ++k) {
    CAPTURE(k);
    CHECK(sums[k].effect().first == Approx(known.first[k]).margin(0.015));
    CHECK(sums[k].effect().total == Approx(known.total[k]).margin(0.015));
  }
}

// Two draws with a variance of 1: 1 - 1/4 would be the first share, and 1/4 is the total.
TEST_CASE("an input brings about no more alone than with others, however few the draws") {
  EffectSums few;
  few.add(1, 1, 0);
  few.add(-1, -1, -1);
  CHECK(few.effect() == Effect{0.25, 0.25});
}

TEST_CASE("a result that never varies is nobody's doing") {
  EffectSums sums;
  for (int i = 0; i < 100; ++i) {
    sums.add(83.4, 83.4, 83.4);
  }
  CHECK(sums.effect() == Effect{0, 0});
  CHECK(EffectSums().effect() == Effect{0, 0});
}

}  // namespace
}  // namespace heelrule
