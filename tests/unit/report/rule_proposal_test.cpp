#include "engine/report/rule_proposal.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("what is proposed has two digits that count") {
  CHECK(proposed_number(0.8437) == "0.84");
  CHECK(proposed_number(12.31) == "12");
  CHECK(proposed_number(1.049) == "1");
  CHECK(proposed_number(0.00123) == "0.0012");
  CHECK(proposed_number(843) == "843");
  CHECK(proposed_number(0) == "0");
}

}  // namespace
}  // namespace heelrule
