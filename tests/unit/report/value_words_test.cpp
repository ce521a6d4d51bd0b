#include "engine/report/value_words.hpp"

#include <catch2/catch.hpp>

#include "engine/quantity/decimal.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const std::string three_bands =
    "[{name: short, below: 10 mm, earns: 0}, {name: right, up to: 15 mm, earns: 100 %}, "
    "{name: long, earns: 50 %}]";

std::string value(double millimetres, const std::vector<double>& cuts) {
  static const Graded sample = graded(one_rule(three_bands), one_record("1 mm", "1 mm"));
  return value_words(sample.program, *sample.program.rules.find_trait("gap"), millimetres, cuts);
}

TEST_CASE("a value has one decimal, and more where one would move it over a cut point") {
  CHECK(value(9.5, {10}) == "9.5 mm");
  CHECK(value(9.94, {10}) == "9.9 mm");
  CHECK(value(9.96, {10}) == "9.96 mm");
  CHECK(value(9.9996, {10}) == "9.9996 mm");
  CHECK(value(10, {10}) == "10 mm");
  CHECK(value(10.04, {10}) == "10.04 mm");
  CHECK(value(10.04, {}) == "10 mm");
}

TEST_CASE("a value on a half is printed on the side of the cut point that it lies on") {
  CHECK(value(9.95, {9.93}) == "9.95 mm");
  CHECK(value(9.95, {9.96}) == "9.9 mm");
  CHECK(value(10.05, {10.07}) == "10.05 mm");
}

TEST_CASE("no printed value contradicts a cut point near it") {
  const std::vector<double> cuts{4.23, 8.465, 10, 12.7};
  for (int thousandths = 4'000; thousandths <= 13'000; ++thousandths) {
    const double exact = thousandths / 1000.0;
    const std::string words = value(exact, cuts);
    const auto printed = parse_decimal(std::string_view(words).substr(0, words.find(' ')));
    REQUIRE(printed);
    for (const double cut : cuts) {
      CAPTURE(words, cut);
      REQUIRE((scaled(*printed) < cut) == (exact < cut));
      REQUIRE((scaled(*printed) > cut) == (exact > cut));
    }
  }
}

TEST_CASE("a distance above nothing is never printed as nothing") {
  CHECK(distance_words(Unit::millimetre, 4.33) == "4.3 mm");
  CHECK(distance_words(Unit::millimetre, 0.04) == "0.04 mm");
  CHECK(distance_words(Unit::millimetre, 0.000000001) == "0.000000001 mm");
  CHECK(distance_words(Unit::millimetre, 0) == "0 mm");
  CHECK(distance_words(Unit::percent, 0.0004) == "0.04 %");
}

TEST_CASE("a score is not lifted over the boundary of a grade that it does not reach") {
  const std::vector<GradeBound> bounds{80'000, 55'000, 0};
  CHECK(score_words(79.96, bounds) == "79.9");
  CHECK(score_words(79.9999999, bounds) == "79.9");
  CHECK(score_words(80, bounds) == "80.0");
  CHECK(score_words(80.04, bounds) == "80.0");
  CHECK(score_words(54.95, bounds) == "54.9");
  CHECK(score_words(54.94, bounds) == "54.9");
  CHECK(score_words(60.96, bounds) == "61.0");
  CHECK(score_words(100, bounds) == "100.0");
  CHECK(score_words(0, bounds) == "0.0");
}

TEST_CASE("a score that reaches an odd boundary gets the decimals that show it") {
  const std::vector<GradeBound> bounds{79'940, 33'333, 0};
  CHECK(score_words(79.94, bounds) == "79.94");
  CHECK(score_words(79.93, bounds) == "79.9");
  CHECK(score_words(100.0 / 3, bounds) == "33.333");
  CHECK(score_words(33.3329, bounds) == "33.3");
}

TEST_CASE("no printed score contradicts the grade beside it") {
  const std::vector<GradeBound> bounds{90'050, 79'999, 55'000, 10'001, 0};
  for (int step = 0; step <= 100'000; step += 7) {
    const double points = step / 1000.0;
    const std::string words = score_words(points, bounds);
    const auto tenths =
        parse_decimal(words.ends_with(".0") ? words.substr(0, words.size() - 2) : words);
    REQUIRE(tenths);
    for (const GradeBound bound : bounds) {
      CAPTURE(words, points, bound);
      REQUIRE((scaled(*tenths) < bound / 1000) == (points < bound / 1000));
    }
  }
}

TEST_CASE("readings are told side by side, or once where they are alike") {
  const std::string rules = one_rule(three_bands);
  const auto told = [&](const std::string& left, const std::string& right) {
    const Graded sample = graded(rules, one_record(left, right));
    return readings_words(sample.program, sample.verdict.findings[0]);
  };
  CHECK(told("12 mm", "9.96 mm") == "left 12 mm, right 9.96 mm");
  CHECK(told("12 mm", "12 mm") == "both 12 mm");
  CHECK(told("1.2 cm", "not seen") == "left 12 mm");
  CHECK(told("not seen", "not seen").empty());
}

TEST_CASE("a finding of one side does not name the side again") {
  const std::string rules = one_rule(three_bands, "    sides: each\n");
  const Graded sample = graded(rules, one_record("12 mm", "7 mm"));
  REQUIRE(sample.verdict.findings.size() == 2);
  CHECK(readings_words(sample.program, sample.verdict.findings[1]) == "7 mm");
}

TEST_CASE("a band is told with the ends that belong to it") {
  const Graded sample = graded(one_rule("[{name: far_short, below: 6 mm, earns: 0}, "
                                        "{name: close, below: 10 mm, earns: 40 %}, "
                                        "{name: right, up to: 15 mm, earns: 100 %}, "
                                        "{name: roomy, up to: 0.8 in, earns: 60 %}, "
                                        "{name: wide, below: 25 mm, earns: 30 %}, "
                                        "{name: long, earns: 10 %}]"),
                               one_record("1 mm", "1 mm"));
  const auto words = [&](std::size_t band) { return band_words(sample.program, 0, band); };
  CHECK(words(0) == "far short (below 6 mm)");
  CHECK(words(1) == "close (6 mm to below 10 mm)");
  CHECK(words(2) == "right (10 mm to 15 mm)");
  CHECK(words(3) == "roomy (above 15 mm to 20.32 mm)");
  CHECK(words(4) == "wide (above 20.32 mm to below 25 mm)");
  CHECK(words(5) == "long (25 mm or more)");
}

TEST_CASE("the first and the last of two bands meet at their cut point") {
  const Graded sample =
      graded(one_rule("[{name: short, up to: 10 mm, earns: 0}, {name: right, earns: 100 %}]"),
             one_record("1 mm", "1 mm"));
  CHECK(band_words(sample.program, 0, 0) == "short (up to 10 mm)");
  CHECK(band_words(sample.program, 0, 1) == "right (above 10 mm)");
}

const std::string all_slots =
    "[{name: far_short, below: 6 mm, earns: 0, "
    "say: '{value} {side} {limit} {short_by} {band} {{x}}'}, "
    "{name: right, up to: 15 mm, earns: 100 %, say: 'fits, {side}'}, "
    "{name: long, earns: 50 %, say: '{value}: {over_by} over {limit}'}]";

std::string said(const std::string& left, const std::string& right) {
  const Graded sample = graded(one_rule(all_slots), one_record(left, right));
  const Finding& finding = sample.verdict.findings[0];
  const SideReading& reading = finding.readings[finding.decisive];
  return fill(sample.program.rule_programs[0].band_words[reading.band].say, {}, sample.program,
              finding, reading);
}

TEST_CASE("each placeholder is filled from the reading that decides") {
  CHECK(said("9 mm", "3.7 mm") == "3.7 mm right 6 mm 2.3 mm far short {x}");
  CHECK(said("5.98 mm", "5.98 mm") == "5.98 mm both 6 mm 0.02 mm far short {x}");
  CHECK(said("7 mm", "7 mm") == "fits, both");
  CHECK(said("7 mm", "15.01 mm") == "15.01 mm: 0.01 mm over 15 mm");
}

TEST_CASE("a phrase that was left out is filled with nothing") {
  const Graded sample = graded(one_rule(three_bands), one_record("1 mm", "1 mm"));
  const Finding& finding = sample.verdict.findings[0];
  CHECK(fill(Phrase{}, {}, sample.program, finding, finding.readings[0]).empty());
}

}  // namespace
}  // namespace heelrule
