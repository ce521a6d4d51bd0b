#include "engine/fitting/sock_advice.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/fitting/two_feet.hpp"

namespace heelrule {
namespace {

Visit with_rack(double left, double right, const std::vector<std::string>& rack) {
  Visit visit = two_feet(left, right);
  for (const std::string& text : rack) {
    const auto range = parse_sock_range(text);
    REQUIRE(range);
    visit.socks.push_back(*range);
  }
  return visit;
}

std::string choice(double left, double right, const std::vector<std::string>& rack) {
  const SockAdvice advice = sock_advice(with_rack(left, right, rack));
  return advice.choose ? show(advice.marked[*advice.choose].range) : "none";
}

// 24.667 to 26.667 cm, by the formula of ISO 19407.
TEST_CASE("a marked range is held against each foot") {
  const SockAdvice advice = sock_advice(with_rack(240, 270, {"EU 39-42"}));
  REQUIRE(advice.marked.size() == 1);
  const auto& on = advice.marked[0].on;
  REQUIRE(on.size() == 2);
  CHECK(on[0].fit == SockFit::too_long);
  CHECK(on[0].misses_by.value() == Approx(6.6666667));
  CHECK(on[1].fit == SockFit::too_short);
  CHECK(on[1].misses_by.value() == Approx(3.3333333));
}

TEST_CASE("both ends of a range belong to it") {
  const SockAdvice advice = sock_advice(with_rack(240, 260, {"24-26 cm"}));
  CHECK(advice.marked[0].on[0].fit == SockFit::right);
  CHECK(advice.marked[0].on[1].fit == SockFit::right);
}

TEST_CASE("of ranges that hold both feet the smaller is taken") {
  CHECK(choice(254, 253, {"25-27 cm", "24-26 cm", "sock 23"}) == "24-26 cm");
  CHECK(choice(250, 250, {"sock 25", "23-25 cm", "25-27 cm"}) == "23-25 cm");
}

TEST_CASE("a range for both feet goes before a smaller one for the longer foot alone") {
  CHECK(choice(262, 252, {"26-27 cm", "25-28 cm"}) == "25-28 cm");
  CHECK(choice(262, 252, {"26-28 cm", "26-27 cm"}) == "26-27 cm");
}

TEST_CASE("where no range holds the longer foot none is taken") {
  CHECK(choice(262, 252, {"24-26 cm", "27-29 cm"}) == "none");
  CHECK(choice(262, 252, {}) == "none");
}

TEST_CASE("a range that cannot be converted holds nobody") {
  const SockAdvice advice = sock_advice(with_rack(180, 180, {"UK child 9-12"}));
  CHECK_FALSE(advice.marked[0].feet);
  CHECK(advice.marked[0].on.empty());
  CHECK_FALSE(advice.choose);
}

Cramping cramping(double lost) {
  Visit visit = two_feet(250, 250);
  visit.left.length_in_sock = about(250 - lost);
  const SockAdvice advice = sock_advice(visit);
  REQUIRE(advice.lost.size() == 1);
  return advice.lost[0].cramping;
}

TEST_CASE("length lost in the sock is judged in English sizes") {
  CHECK(cramping(-1) == Cramping::free);
  CHECK(cramping(4.2) == Cramping::free);
  CHECK(cramping(4.3) == Cramping::tight);
  CHECK(cramping(8.4) == Cramping::tight);
  CHECK(cramping(8.5) == Cramping::cramped);
}

// The blend of EU 1007/2011 Annex IX worked out by hand: 0.8 · 8.5 + 0.17 · 5.75 + 0.03 · 1.5.
TEST_CASE("a blend has its moisture and its cotton") {
  Visit visit = two_feet(250, 250);
  const auto blend = parse_fibre_content("80 % cotton, 17 % polyamide filament, 3 % elastane");
  REQUIRE(blend);
  visit.fibres = *blend;
  const SockAdvice advice = sock_advice(visit);
  CHECK(*advice.moisture == Approx(0.078225));
  CHECK(*advice.cotton == Approx(0.8));
}

TEST_CASE("grooves of the cuff are told by side") {
  Visit visit = two_feet(250, 250);
  visit.right.cuff_grooves = true;
  CHECK(sock_advice(visit).grooves == std::vector<Side>{Side::right});
}

}  // namespace
}  // namespace heelrule
