// How much longer than the standing foot a shoe should be inside, by the papers that Jones and
// others list (2020, Journal of Foot and Ankle Research 13:70):
//   10 to 15 mm   Chantelau 2002, McInnes 2012, Chicharro-Luna 2020
//   10 to 20 mm   IWGDF 2019 and the Australian guideline of 2018, for feet at risk
// and for children by 10 to 17 mm, 12 mm being the aim (Maier for the 12 mm; the window is partly
// from memory).
#include <fmt/format.h>

#include <catch2/catch.hpp>

#include "engine/scoring/grade.hpp"
#include "tests/shipped/shipped.hpp"

namespace heelrule {
namespace {

// Grades insoles that are longer than the foot by each half millimetre from 0 to 30 mm, and checks
// that those in the window pass in full and no others do.
void check_window(const std::string& rule_set, double from, double to) {
  const Program program = shipped_program(rule_set);
  for (int halves = 0; halves <= 60; ++halves) {
    const double allowance = halves / 2.0;
    const std::string text = fmt::format(
        "inspection: {{rules: {}}}\nfound: {{foot_length: 243.5 mm, insole_length: {} mm}}\n",
        rule_set, 243.5 + allowance);
    const Verdict verdict = grade(program, record_for(program, "insole.yaml", text));
    CAPTURE(rule_set, allowance);
    const bool inside = from <= allowance && allowance <= to;
    CHECK((finding_of(program, verdict, "toe_allowance").status == Status::pass) == inside);
  }
}

TEST_CASE("for adults an allowance of 10 to 15 mm passes, both ends included") {
  check_window("fit", 10, 15);
  check_window("everyday", 10, 15);
}

TEST_CASE("for a foot at risk an allowance of 10 to 20 mm passes, both ends included") {
  check_window("at-risk-foot", 10, 20);
}

TEST_CASE("for children an allowance of 10 to 17 mm passes, both ends included") {
  check_window("child", 10, 17);
}

// Common practice: both feet are measured standing, and the shoe has to fit the longer one.
TEST_CASE("the longer foot decides, whichever side it is on") {
  const Program program = shipped_program("fit");
  for (const char* feet : {"left: 243 mm, right: 250 mm", "left: 250 mm, right: 243 mm"}) {
    const Inspection inspection =
        record_for(program, "feet.yaml",
                   fmt::format("inspection: {{rules: fit}}\nfound: {{foot_length: {{{}}}, "
                               "insole_length: 255 mm}}\n",
                               feet));
    const Verdict verdict = grade(program, inspection);
    const Finding& found = finding_of(program, verdict, "toe_allowance");
    CHECK(found.status == Status::fail);
    CHECK(found.readings[found.decisive].value == 5);
  }
}

}  // namespace
}  // namespace heelrule
