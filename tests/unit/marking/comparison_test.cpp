#include "engine/marking/comparison.hpp"

#include <catch2/catch.hpp>
#include <cmath>

#include "tests/unit/marking/marked.hpp"

namespace heelrule {
namespace {

const std::string bench = house(
    "  length: {ask: Length, measure: mm, per: foot, doubt: 1 mm}\n"
    "  bare: {ask: Length without a doubt, measure: mm}\n"
    "  insole: {ask: Insole, scale: [broken, thin, flat, springy]}\n"
    "  fastening: {ask: Fastening, choice: [laces, buckle]}\n"
    "  fibres: {ask: Socks, content: fibres}\n"
    "  size: {ask: Marked, marked: shoe size}\n",
    rule("length", "4",
         "bands: [{name: short, below: 250 mm, earns: 0}, {name: right, earns: 100 %}]") +
        rule("insole", "3", "levels: {broken: 0, thin: 20 %, flat: 50 %, springy: 100 %}"));

Marked against(const std::string& reference, const std::string& record,
               const std::string& marking = "") {
  return marked(bench, marking, {"found: " + reference}, "found: " + record);
}

TEST_CASE("a measure counts by the expanded uncertainties of both readings") {
  const Marked near = against("{length: {left: 243 mm, right: 250 mm}}",
                              "{length: {left: 245.8 mm, right: 247 mm}}");
  const Comparison& left = near.of("length", Side::left);
  CHECK(left.likeness == Likeness::within);
  CHECK(left.tolerance == Approx(2 * std::sqrt(2.0)));
  CHECK(left.source == ToleranceSource::uncertainty);
  CHECK(*left.normalised_error == Approx(2.8 / (2 * std::sqrt(2.0))));
  CHECK(left.credit == 1);
  const Comparison& right = near.of("length", Side::right);
  CHECK(right.likeness == Likeness::off);
  CHECK(*right.difference == -3);
  CHECK(*right.normalised_error > 1);
  CHECK(right.credit == 0);
}

TEST_CASE("a wide doubt or scatter of the student's own buys no tolerance") {
  const Marked wide = against(
      "{length: 243 mm}", "{length: {left: {value: 253 mm, doubt: 20 mm}, right: [233, 273 mm]}}");
  CHECK(wide.of("length", Side::left).likeness == Likeness::off);
  CHECK(wide.of("length", Side::right).likeness == Likeness::off);
}

TEST_CASE("the reference's own doubt does") {
  const Marked wide = against("{length: {value: 243 mm, doubt: 5 mm}}", "{length: 253 mm}");
  CHECK(wide.of("length", Side::left).likeness == Likeness::within);
  CHECK(wide.of("length", Side::left).tolerance == Approx(2 * std::sqrt(26.0)));
}

TEST_CASE("without any doubt only the same reading is right") {
  CHECK(against("{bare: 243 mm}", "{bare: 243 mm}").of("bare").likeness == Likeness::right);
  const Marked other = against("{bare: 243 mm}", "{bare: 244 mm}");
  CHECK(other.of("bare").likeness == Likeness::off);
  CHECK(other.of("bare").source == ToleranceSource::none);
  CHECK(!other.of("bare").normalised_error);
}

TEST_CASE("the trainer's tolerance goes before all others, and its end belongs to it") {
  const std::string marking = "tolerances: {bare: 0.3 mm, length: 1 mm, insole: 1 level}";
  const Marked found = against("{bare: 243 mm, length: 243 mm, insole: flat}",
                               "{bare: 243.3 mm, length: 244.5 mm, insole: springy}", marking);
  CHECK(found.of("bare").likeness == Likeness::within);
  CHECK(found.of("length", Side::left).likeness == Likeness::off);
  CHECK(found.of("length", Side::left).source == ToleranceSource::trainer);
  CHECK(found.of("insole").likeness == Likeness::within);
}

TEST_CASE("each level off costs its share, and never more than there is") {
  const auto credit = [](const std::string& level, const std::string& marking) {
    return against("{insole: springy}", "{insole: " + level + "}", marking).of("insole").credit;
  };
  CHECK(credit("flat", "") == 0.5);
  CHECK(credit("thin", "") == 0);
  CHECK(credit("broken", "") == 0);
  CHECK(credit("flat", "level_off: 30 %") == Approx(0.7));
  CHECK(credit("thin", "level_off: 30 %") == Approx(0.4));
  CHECK(credit("flat", "level_off: 100 %") == 0);
}

TEST_CASE("choices, sizes and fibres are right or wrong") {
  const std::string seen =
      "{fastening: laces, size: EU 39, fibres: {cotton: 80 %, polyester: 20 %}}";
  const Marked same = against(seen, seen);
  const Marked other =
      against(seen, "{fastening: buckle, size: EU 40, fibres: {cotton: 78 %, polyester: 22 %}}");
  for (const char* trait : {"fastening", "size", "fibres"}) {
    CHECK(same.of(trait).likeness == Likeness::right);
    CHECK(other.of(trait).likeness == Likeness::off);
    CHECK(other.of(trait).credit == 0);
  }
  const Marked tolerant =
      against(seen, "{fibres: {cotton: 78 %, polyester: 22 %}}", "tolerances: {fibres: 2 %}");
  CHECK(tolerant.of("fibres").likeness == Likeness::within);
}

TEST_CASE("missed, invented, and what the reference is silent about") {
  const Marked found = against("{insole: flat, fastening: laces, bare: not seen}",
                               "{fastening: not seen, bare: 3 mm, size: EU 39}");
  CHECK(found.of("insole").likeness == Likeness::missed);
  CHECK(found.of("fastening").likeness == Likeness::missed);
  CHECK(found.of("bare").likeness == Likeness::invented);
  CHECK(found.of("size").likeness == Likeness::not_held);
  CHECK(found.mark.comparisons.size() == 4);
}

TEST_CASE("a trait's weight is shared by its sides, and the trainer's own goes first") {
  const Marked found = against("{length: 243 mm, insole: flat, bare: 3 mm}",
                               "{length: 243 mm, insole: flat, bare: 3 mm}", "weights: {bare: 5}");
  CHECK(found.of("bare").weight == 5);
  CHECK(found.of("length", Side::left).weight == found.of("length", Side::right).weight);
  const std::size_t length = *found.program.rules.find_trait("length");
  CHECK(2 * found.of("length", Side::left).weight == Approx(found.reference.worths[length]));
  CHECK(found.mark.points == 100.0);
}

// By hand: of 7 weights the reference earns 1.5, 21.4 points. Were length not seen, 1.5 of 3 would
// remain, 50 points; were it failed, as it is; were it passed, 5.5 of 7, 78.6 points: 57.1 further.
// Insole: not seen 0 points, failed 0 points, passed 3 of 7, 42.9 points: 21.4 either way.
TEST_CASE("a trait is worth the furthest that it can move the reference's score") {
  const Marked found = against("{length: 243 mm, insole: flat}", "{length: 243 mm}");
  const auto worth = [&](const char* trait) {
    return found.reference.worths[*found.program.rules.find_trait(trait)];
  };
  CHECK(worth("length") == Approx(100 * 4.0 / 7));
  CHECK(worth("insole") == Approx(100 * 1.5 / 7));
  CHECK(worth("fibres") == 0);
  CHECK(*found.mark.points == Approx(100 * (4.0 / 7) / (5.5 / 7)));
}

}  // namespace
}  // namespace heelrule
