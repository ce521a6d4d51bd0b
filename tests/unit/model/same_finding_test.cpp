#include "engine/model/same_finding.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

Finding of(std::size_t rule, Side side) {
  Finding finding;
  finding.rule = rule;
  finding.side = side;
  return finding;
}

TEST_CASE("a finding is found again by its rule and side, wherever it stands") {
  Verdict other;
  other.findings = {of(2, Side::left), of(2, Side::right), of(0, Side::none)};
  CHECK(same_finding(other, of(2, Side::right)) == &other.findings[1]);
  CHECK(same_finding(other, of(0, Side::none)) == &other.findings[2]);
  CHECK(same_finding(other, of(1, Side::none)) == nullptr);
  CHECK(same_finding(other, of(0, Side::left)) == nullptr);
}

}  // namespace
}  // namespace heelrule
