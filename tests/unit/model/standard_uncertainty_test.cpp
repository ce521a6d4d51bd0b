#include "engine/model/standard_uncertainty.hpp"

#include <boost/math/distributions/students_t.hpp>
#include <catch2/catch.hpp>
#include <cmath>

#include "engine/quantity/deviate.hpp"
#include "engine/quantity/random_stream.hpp"

namespace heelrule {
namespace {

Readings readings(std::vector<double> stored, std::optional<double> doubt = std::nullopt) {
  return {std::move(stored), Unit::millimetre, doubt, false};
}

MeasureKind measure(std::optional<double> doubt, std::optional<double> resolution = std::nullopt) {
  const auto located = [](std::optional<double> stored) -> std::optional<Located<Quantity>> {
    return stored ? std::optional(Located<Quantity>{{*stored, Unit::millimetre}, {}})
                  : std::nullopt;
  };
  return {Unit::millimetre, std::nullopt, located(doubt), located(resolution)};
}

TEST_CASE("one reading has the doubt of its trait, or that of the record") {
  CHECK(standard_uncertainty(readings({243}), measure(1)) == 1);
  CHECK(standard_uncertainty(readings({243}, 2.5), measure(1)) == 2.5);
  CHECK(standard_uncertainty(readings({243}, 0.0), measure(1)) == 0);
  CHECK(standard_uncertainty(readings({243}), measure({})) == 0);
}

// A step of 1 mm is half a millimetre over √3, one of 5 mm is 1.443 mm: JCGM 100, 4.3.7.
TEST_CASE("a reading lies anywhere in the step to which it is read") {
  CHECK(standard_uncertainty(readings({243}), measure({}, 1)) == Approx(0.288675).epsilon(1e-5));
  CHECK(standard_uncertainty(readings({245}), measure({}, 5)) == Approx(1.443376).epsilon(1e-6));
  CHECK(standard_uncertainty(readings({243}), measure(1, 1)) == Approx(std::sqrt(13.0 / 12)));
}

TEST_CASE("repeats that agree leave the doubt of one reading, for an instrument can be wrong too") {
  CHECK(standard_uncertainty(readings({246, 246, 246}), measure(1)) == 1);
}

// s of 246, 247, 246 is 0.57735, and s/√3 = 1/3. Two degrees of freedom, t = 4.3027: by hand.
TEST_CASE("three repeats alone are as sure as the t distribution says") {
  CHECK(standard_uncertainty(readings({246, 247, 246}), measure({})) ==
        Approx(4.3027 / 1.959964 / 3).epsilon(1e-6));
}

// With 1 mm: √(1 + 1/9) = 1.05409; its fourth power over that of 1/3, halved, gives 200 degrees of
// freedom, where t is 1.97190.
TEST_CASE("where most of the doubt is known, few repeats widen it little") {
  CHECK(standard_uncertainty(readings({246, 247, 246}), measure(1)) ==
        Approx(1.0540926 * 1.97190 / 1.959964).epsilon(1e-5));
}

TEST_CASE("the quantiles are those of the t distribution, in the table and beyond it") {
  for (const std::size_t count : {2U, 3U, 4U, 8U, 15U, 31U, 32U, 50U, 400U}) {
    std::vector<double> stored(count, 10.0);
    stored[0] = 10 + static_cast<double>(count);  // the mean is 11
    double squares = (static_cast<double>(count) - 1) * (static_cast<double>(count) - 1);
    squares += static_cast<double>(count) - 1;
    const double freedom = static_cast<double>(count) - 1;
    const double scatter = std::sqrt(squares / freedom / static_cast<double>(count));
    const double t = boost::math::quantile(boost::math::students_t(freedom), 0.975);
    CAPTURE(count);
    CHECK(standard_uncertainty(readings(stored), measure({})) ==
          Approx(scatter * t / 1.959963984540054).epsilon(5e-5));
  }
}

TEST_CASE("of any one reading it is what the trait says, whatever it reads") {
  MeasureKind known = measure({});
  CHECK(standard_uncertainty(known) == 0);
  known.doubt = {{1, Unit::millimetre}, {}};
  CHECK(standard_uncertainty(known) == 1);
  known.resolution = {{1, Unit::millimetre}, {}};
  CHECK(standard_uncertainty(known) == standard_uncertainty(readings({250}), known));
}

// What the number is for: 1.96 of it either way hold the truth 19 times in 20, however few the
// repeats. 20,000 made-up sets of readings around 250 mm.
TEST_CASE("a stated 95 % holds 95 %") {
  for (const std::size_t count : {2U, 3U, 5U}) {
    int held = 0;
    for (std::uint32_t set = 0; set < 20'000; ++set) {
      std::vector<double> stored;
      for (std::uint32_t i = 0; i < count; ++i) {
        const std::uint32_t word =
            random_words({set, i, static_cast<std::uint32_t>(count), 0}, {7, 7})[0];
        stored.push_back(250 + 0.8 * normal_deviate(open_fraction(word)));
      }
      const Readings set_of_readings = readings(stored);
      const double half = 1.959964 * standard_uncertainty(set_of_readings, measure({}));
      held += std::fabs(mean(set_of_readings) - 250) <= half ? 1 : 0;
    }
    CAPTURE(count);
    CHECK(held / 20'000.0 == Approx(0.95).margin(0.005));
  }
}

}  // namespace
}  // namespace heelrule
