// What holds of the doubt of every verdict.
#include "engine/doubt/doubt.hpp"

#include <catch2/catch.hpp>

#include "engine/doubt/conformity.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

// Gives every measure a doubt and every scale a confusion.
void put_in_doubt(RuleSet& rules, Dice& dice) {
  for (Trait& trait : rules.traits) {
    if (auto* measure = std::get_if<MeasureKind>(&trait.kind)) {
      const double doubt = static_cast<double>(dice.below(4)) / 2;
      measure->doubt = {{doubt, measure->unit}, {}};
    } else if (auto* scale = std::get_if<ScaleKind>(&trait.kind)) {
      scale->confusion.value = static_cast<double>(dice.below(3)) / 10;
    }
  }
}

template <class Check>
void for_each_doubt(std::uint64_t seed, int times, bool in_doubt, const Check& check) {
  Dice dice(seed);
  for (int i = 0; i < times; ++i) {
    Program program = random_program(dice);
    if (in_doubt) {
      put_in_doubt(program.rules, dice);
    }
    const Inspection inspection = random_inspection(program.rules, dice);
    INFO(outline(program.rules) << outline(program.rules, inspection));
    const Verdict verdict = grade(program, inspection);
    check(program, verdict, doubt_of(program, inspection, verdict));
  }
}

TEST_CASE("all chances lie from 0 to 1, and those of one thing add up to 1") {
  int doubtful = 0;
  for_each_doubt(31, 20, true, [&](const Program&, const Verdict& verdict, const Doubt& doubt) {
    doubtful += doubt.readings.empty() ? 0 : 1;
    double grades = 0;
    for (const GradeDoubt& grade : doubt.grades) {
      REQUIRE(grade.surely >= 0);
      REQUIRE(grade.surely <= grade.chance + (verdict.grade ? 0 : 1));
      REQUIRE(grade.chance <= grade.possibly);
      REQUIRE(grade.possibly <= 1);
      grades += grade.chance;
    }
    REQUIRE(grades <= 1 + 1e-12);
    for (const FindingDoubt& finding : doubt.findings) {
      const StatusChances& c = finding.chances;
      REQUIRE(c.pass + c.part + c.fail + c.open == Approx(1).epsilon(1e-12));
      REQUIRE(finding.sure >= 0);
      REQUIRE(finding.sure <= 1 + 1e-12);
    }
  });
  CHECK(doubtful > 10);
}

TEST_CASE("where nothing is open and something counts, the chances of the grades add up to 1") {
  for_each_doubt(32, 20, true,
                 [](const Program& program, const Verdict& verdict, const Doubt& doubt) {
                   const bool varies =
                       std::any_of(program.contributions.begin(), program.contributions.end(),
                                   [](const Contribution& c) { return c.applies != no_register; });
                   if (!verdict.grade || varies) {
                     return;
                   }
                   double sum = 0;
                   for (const GradeDoubt& grade : doubt.grades) {
                     sum += grade.chance;
                   }
                   REQUIRE(sum == Approx(1).epsilon(1e-12));
                 });
}

TEST_CASE("without doubt the chances say what the verdict says") {
  Dice dice(33);
  for (int i = 0; i < 300; ++i) {
    const Program program = random_program(dice);
    const Inspection inspection = [&] {
      Inspection drawn = random_inspection(program.rules, dice);
      for (Observation& seen : drawn.observations) {
        if (auto* readings = std::get_if<Readings>(&seen.value)) {
          readings->stored.resize(1);  // repeats that differ are a doubt
        }
      }
      return drawn;
    }();
    INFO(outline(program.rules) << outline(program.rules, inspection));
    const Verdict verdict = grade(program, inspection);
    const Doubt doubt = doubt_of(program, inspection, verdict);
    REQUIRE(doubt.readings.empty());
    for (std::size_t g = 0; g < doubt.grades.size(); ++g) {
      REQUIRE(doubt.grades[g].chance == (verdict.grade == g ? 1 : 0));
      REQUIRE(doubt.grades[g].possibly ==
              (g >= verdict.highest_grade && g <= verdict.lowest_grade ? 1 : 0));
    }
    for (std::size_t f = 0; f < doubt.findings.size(); ++f) {
      REQUIRE(doubt.findings[f].sure == 1);
      REQUIRE(doubt.findings[f].is_clear);
      for (std::size_t s = 0; s < doubt.findings[f].sides.size(); ++s) {
        const SideDoubt& side = doubt.findings[f].sides[s];
        REQUIRE(side.uncertainty == 0);
        for (std::size_t band = 0; band < side.bands.size(); ++band) {
          REQUIRE(side.bands[band] == (band == verdict.findings[f].readings[s].band ? 1 : 0));
        }
      }
    }
  }
}

TEST_CASE("deep inside a band more doubt never makes it surer") {
  Dice dice(34);
  for (int i = 0; i < 5000; ++i) {
    const double low = static_cast<double>(dice.below(200)) / 10;
    const double width = static_cast<double>(1 + dice.below(100)) / 10;
    // Anywhere in the band for a band with two ends: more doubt takes from the inside.
    const double value = low + width * (static_cast<double>(dice.below(101)) / 100);
    double before = 1;
    for (double uncertainty = 0.05; uncertainty < 20; uncertainty *= 1.3) {
      const double chance = chance_within(value, uncertainty, low, low + width);
      CAPTURE(low, width, value, uncertainty);
      REQUIRE(chance <= before + 1e-14);
      before = chance;
    }
  }
}

}  // namespace
}  // namespace heelrule
