// The slope of a sole is the angle whose tangent is the rise from ball to heel over the distance
// between them: plane geometry. The angles were worked out apart from this program and rounded to
// hundredths of a degree.
#include <fmt/format.h>

#include <catch2/catch.hpp>

#include "engine/scoring/grade.hpp"
#include "tests/shipped/shipped.hpp"

namespace heelrule {
namespace {

struct Pitch {
  double rise;      // mm
  double distance;  // mm
  double degrees;
};

const std::vector<Pitch> pitches{{4, 180, 1.27},  {10, 180, 3.18}, {12, 180, 3.81}, {20, 180, 6.34},
                                 {25, 180, 7.91}, {10, 200, 2.86}, {25, 200, 7.13}};

Verdict verdict(const Program& program, double heel, double fore, double distance) {
  const std::string text = fmt::format(
      "inspection: {{rules: sole}}\n"
      "found: {{heel_thickness: {} mm, fore_thickness: {} mm, heel_to_ball: {} mm}}\n",
      heel, fore, distance);
  return grade(program, record_for(program, "sole.yaml", text));
}

const SideReading& reading_of(const Program& program, const Verdict& verdict,
                              const std::string& rule) {
  const Finding& found = finding_of(program, verdict, rule);
  REQUIRE(found.readings.size() == 2);
  REQUIRE(found.sides_alike);
  return found.readings[0];
}

TEST_CASE("the pitch of a sole is the angle of its rise over the way from heel to ball") {
  const Program program = shipped_program("sole");
  for (const Pitch& pitch : pitches) {
    CAPTURE(pitch.rise, pitch.distance);
    const Verdict v = verdict(program, 8 + pitch.rise, 8, pitch.distance);
    CHECK(reading_of(program, v, "sole_rise").value == pitch.rise);
    CHECK(std::fabs(reading_of(program, v, "heel_pitch").value - pitch.degrees) <= 0.005);
  }
}

TEST_CASE("a sole that falls toward the heel has the same pitch below zero") {
  const Program program = shipped_program("sole");
  for (const Pitch& pitch : pitches) {
    const Verdict v = verdict(program, 8, 8 + pitch.rise, pitch.distance);
    CHECK(std::fabs(reading_of(program, v, "heel_pitch").value + pitch.degrees) <= 0.005);
  }
}

// Angles whose tangents are exact: a right-angled triangle of two equal sides, and a level line.
TEST_CASE("a rise as long as the way is 45 degrees, and no rise is none") {
  const Program program = shipped_program("sole");
  CHECK(reading_of(program, verdict(program, 80, 20, 60), "heel_pitch").value == 45);
  CHECK(reading_of(program, verdict(program, 20, 20, 180), "heel_pitch").value == 0);
}

}  // namespace
}  // namespace heelrule
