// Agreed moisture allowances of blends through a whole rule set, by Annex IX of Regulation (EU) No
// 1007/2011: the allowances of the fibres, weighted by their shares of the mass. Worked out by
// hand.
#include <fmt/format.h>

#include <catch2/catch.hpp>

#include "engine/scoring/grade.hpp"
#include "tests/shipped/shipped.hpp"

namespace heelrule {
namespace {

struct Blend {
  const char* label;
  double percent;
};

const std::vector<Blend> blends{
    // 0.80 · 8.50 + 0.17 · 5.75 + 0.03 · 1.50 = 6.8 + 0.9775 + 0.045
    {"cotton: 80 %, polyamide filament: 17 %, elastane: 3 %", 7.8225},
    // 0.70 · 17.00 + 0.28 · 6.25 + 0.02 · 1.50 = 11.9 + 1.75 + 0.03
    {"carded wool: 70 %, polyamide staple: 28 %, elastane: 2 %", 13.68},
    // 0.50 · 13.00 + 0.50 · 2.00
    {"viscose: 50 %, acrylic: 50 %", 7.5},
    // 0.97 · 1.50 + 0.03 · 1.50
    {"polyester: 97 %, elastane: 3 %", 1.5},
    {"combed wool: 100 %", 18.25},
};

double read_by(const Program& program, const Verdict& verdict, const std::string& rule) {
  const Finding& found = finding_of(program, verdict, rule);
  REQUIRE(found.readings.size() == 1);
  return found.readings[0].value;
}

Verdict verdict(const Program& program, const std::string& label) {
  return grade(program, record_for(program, "sock.yaml",
                                   fmt::format("inspection: {{rules: hosiery}}\n"
                                               "found: {{wears_socks: yes, sock_fibres: {{{}}}}}\n",
                                               label)));
}

TEST_CASE("the blend of a sock holds the moisture that Annex IX agrees on") {
  const Program program = shipped_program("hosiery");
  for (const Blend& blend : blends) {
    CAPTURE(blend.label);
    const Verdict v = verdict(program, blend.label);
    const double fraction = read_by(program, v, "sock_moisture");
    CHECK(100 * fraction == Approx(blend.percent).epsilon(1e-12));
  }
}

TEST_CASE("the share of cotton is that of the label") {
  const Program program = shipped_program("hosiery");
  const Verdict v = verdict(program, blends[0].label);
  CHECK(read_by(program, v, "cotton_share") == 0.8);
  const Verdict none = verdict(program, blends[1].label);
  CHECK(read_by(program, none, "cotton_share") == 0);
}

}  // namespace
}  // namespace heelrule
