#include "engine/doubt/doubtful_reading.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/doubt/doubted.hpp"

namespace heelrule {
namespace {

const std::string feet = house(
    "  length: {ask: Length, measure: mm, per: foot, doubt: 1 mm}\n"
    "  spare: {ask: Read by no rule, measure: mm, doubt: 1 mm}\n"
    "  counter: {ask: Counter, scale: [soft, medium, firm], confusion: 20 %}\n"
    "  plain: {ask: Laced, answer: yes or no}\n",
    rule("length", "1",
         "bands: [{name: short, below: 240 mm, earns: 0}, {name: long, earns: 100 %}]") +
        rule("counter", "1", "levels: {soft: 0, medium: 50 %, firm: 100 %}") +
        rule("plain", "1", "levels: {yes: 100 %, no: 0}"));

std::vector<DoubtfulReading> readings(const std::string& found) {
  return doubted(feet, found).doubt.readings;
}

TEST_CASE("readings in doubt are those with a doubt that a rule depends on") {
  const auto found =
      readings("{length: {left: 243 mm, right: 246 mm}, spare: 9 mm, counter: firm, plain: yes}");
  REQUIRE(found.size() == 3);
  CHECK(found[0].side == Side::left);
  CHECK(found[0].value == 243);
  CHECK(std::get<Spread>(found[0].doubt).uncertainty == 1);
  CHECK(found[1].side == Side::right);
  CHECK(std::get<OneLevelOff>(found[2].doubt) == OneLevelOff{0.2, 2});
}

TEST_CASE("one value for both sides is one reading, and two equal values are two") {
  const auto one = readings("{length: 243 mm}");
  REQUIRE(one.size() == 1);
  CHECK(one[0].inputs.size() == 2);
  CHECK(one[0].side == Side::none);
  CHECK(readings("{length: {left: 243 mm, right: 243 mm}}").size() == 2);
}

TEST_CASE("what was not seen is no reading, and neither is one that its record calls exact") {
  CHECK(readings("{length: {left: not seen, right: {value: 243 mm, doubt: 0 mm}}}").empty());
}

TEST_CASE("a level is drawn as often as its chance: half of the confusion either way") {
  const DoubtfulReading medium{0, Side::none, {0}, 1, OneLevelOff{0.2, 2}};
  CHECK(drawn(medium, 0) == 0);
  CHECK(drawn(medium, 0x19000000) == 0);  // 0.0977 of 2^32
  CHECK(drawn(medium, 0x1a000000) == 1);  // 0.1016
  CHECK(drawn(medium, 0xe6000000) == 1);
  CHECK(drawn(medium, 0xe7000000) == 2);
  const DoubtfulReading firm{0, Side::none, {0}, 2, OneLevelOff{0.2, 2}};
  CHECK(drawn(firm, 0) == 1);
  CHECK(drawn(firm, 0xffffffff) == 2);
}

TEST_CASE("a little off is two standard uncertainties, or one level as far as there is one") {
  const DoubtfulReading length{0, Side::left, {0}, 243, Spread{1.5}};
  CHECK(a_little_off(length, true) == 246);
  CHECK(a_little_off(length, false) == 240);
  const DoubtfulReading firm{0, Side::none, {0}, 2, OneLevelOff{0.2, 2}};
  CHECK(a_little_off(firm, true) == 2);
  CHECK(a_little_off(firm, false) == 1);
}

}  // namespace
}  // namespace heelrule
