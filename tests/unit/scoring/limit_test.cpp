#include "engine/scoring/limit.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const std::string bands =
    "[{name: short, below: 6 mm, earns: 0}, {name: right, below: 15 mm, earns: 100 %},"
    " {name: long, earns: 20 %}]";

std::optional<Limit> limit(const std::string& value) {
  const Graded one = graded(one_rule(bands), one_record(value, value));
  const Finding& found = one.verdict.findings.front();
  return limit_of(one.program.rule_programs[found.rule], found.readings.front());
}

TEST_CASE("a limit lies toward the band that earns more, above or below") {
  CHECK(limit("4.5 mm") == Limit{6, 1.5, true});
  CHECK(limit("18 mm") == Limit{15, 3, false});
  CHECK(limit("15 mm") == Limit{15, 0, false});
}

TEST_CASE("a reading in the best band has no limit") { CHECK_FALSE(limit("6 mm")); }

}  // namespace
}  // namespace heelrule
