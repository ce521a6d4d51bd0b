#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "engine/scoring/program.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

// Whether a value lies in a band as its author wrote it: above what ends the band before it, and
// not beyond its own end.
bool holds(const std::vector<Band>& bands, std::size_t at, double value) {
  const auto beyond = [&](const Band& band) {
    const double cut = band.cut->at.stored;
    return value > cut || (value == cut && !band.cut->belongs_below);
  };
  return (at == 0 || beyond(bands[at - 1])) && (at + 1 == bands.size() || !beyond(bands[at]));
}

// On the cut points, a hair beside them, and anywhere.
std::vector<double> values_near(const std::vector<Band>& bands, Dice& dice) {
  constexpr double infinity = std::numeric_limits<double>::infinity();
  std::vector<double> values{-1e9, 0, 1e9, random_length(dice, -60)};
  for (const Band& band : bands) {
    if (band.cut) {
      const double cut = band.cut->at.stored;
      values.push_back(cut);
      values.push_back(std::nextafter(cut, infinity));
      values.push_back(std::nextafter(cut, -infinity));
    }
  }
  return values;
}

TEST_CASE("every value lies in exactly one band, and the engine finds that one") {
  Dice dice(1);
  std::size_t rules_with_bands = 0;
  for (int i = 0; i < 1000; ++i) {
    const Program program = random_program(dice);
    for (std::size_t rule = 0; rule < program.rules.rules.size(); ++rule) {
      const std::vector<Band>& bands = program.rules.rules[rule].bands;
      rules_with_bands += bands.empty() ? 0 : 1;
      for (const double value : bands.empty() ? std::vector<double>() : values_near(bands, dice)) {
        std::vector<std::size_t> found;
        for (std::size_t at = 0; at < bands.size(); ++at) {
          if (holds(bands, at, value)) {
            found.push_back(at);
          }
        }
        CAPTURE(value);
        INFO(outline(program.rules));
        REQUIRE(found == std::vector{program.rule_programs[rule].scale.band(value)});
      }
    }
  }
  CHECK(rules_with_bands > 1000);
}

TEST_CASE("a credit lies between what the ends of its band earn") {
  Dice dice(2);
  for (int i = 0; i < 1000; ++i) {
    const Program program = random_program(dice);
    for (std::size_t rule = 0; rule < program.rules.rules.size(); ++rule) {
      const std::vector<Band>& bands = program.rules.rules[rule].bands;
      const CreditScale& scale = program.rule_programs[rule].scale;
      for (const double value : bands.empty() ? std::vector<double>() : values_near(bands, dice)) {
        const Credit& earns = bands[scale.band(value)].earns.value;
        const double credit = scale.credit(value);
        REQUIRE(credit >= std::min(earns.from, earns.to));
        REQUIRE(credit <= std::max(earns.from, earns.to));
        REQUIRE(credit == std::floor(credit));
      }
    }
  }
}

}  // namespace
}  // namespace heelrule
