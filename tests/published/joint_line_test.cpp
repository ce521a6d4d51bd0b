// 404 adults of the anthropometric survey of US Army personnel of 2012 (ANSUR II), graded by the
// rule set of examples/survey, against what other means make of the same file. US Government work,
// public domain. Soldiers only: no reference for clients.
#include <fmt/format.h>

#include <catch2/catch.hpp>
#include <map>
#include <sstream>

#include "engine/quantity/decimal.hpp"
#include "engine/reading/load_rules.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/shipped/shipped.hpp"

namespace heelrule {
namespace {

struct Soldier {
  std::string gender;
  std::string foot_length;
  std::string ball_length;
};

std::vector<Soldier> soldiers() {
  std::istringstream file(content_of(HEELRULE_TEST_DATA "/ansur2_foot_sample.csv"));
  std::string line;
  std::getline(file, line);
  REQUIRE(
      line.starts_with("gender,age,stature,weightkg,footlength,footbreadthhorizontal,"
                       "balloffootlength,"));
  std::vector<Soldier> all;
  while (std::getline(file, line)) {
    std::vector<std::string> cells;
    std::istringstream row(line);
    for (std::string cell; std::getline(row, cell, ',');) {
      cells.push_back(cell);
    }
    REQUIRE(cells.size() == 13);
    all.push_back({cells[0], cells[4], cells[6]});
  }
  return all;
}

Program program_for(const std::string& path) {
  Sources sources;
  const auto find = [&](std::string_view name, std::string_view) -> Parsed<FoundFile> {
    const std::string file =
        name == "asked" ? path : fmt::format("{}/{}.yaml", HEELRULE_TEST_RULES, name);
    return FoundFile{file, file, content_of(file)};
  };
  LoadedRules loaded = load_rules("asked", find, sources);
  auto program = compile(std::move(loaded.rules), std::move(loaded.diagnostics));
  REQUIRE(program);
  return *std::move(program);
}

// As examples/survey/records writes a row: the right foot alone.
Inspection record_of(const Program& program, const Soldier& soldier) {
  return record_for(program, "row.json",
                    fmt::format(R"({{"inspection": {{"rules": "feet"}}, "found": {{)"
                                R"("foot_length": {{"right": "{} mm"}}, )"
                                R"("ball_length": {{"right": "{} mm"}}}}}})",
                                soldier.foot_length, soldier.ball_length));
}

struct Surveyed {
  int people = 0;
  double graded_sum = 0;  // of the shares that the engine read
  double plain_sum = 0;   // of the shares by plain division
  std::map<std::string, int> bands;
};

std::map<std::string, Surveyed> survey() {
  const Program program = program_for(HEELRULE_TEST_EXAMPLES "/survey/right-foot.yaml");
  std::map<std::string, Surveyed> by_gender;
  for (const Soldier& soldier : soldiers()) {
    const Verdict verdict = grade(program, record_of(program, soldier));
    const Finding& found = finding_of(program, verdict, "right_ball_share");
    REQUIRE(found.readings.size() == 1);
    Surveyed& group = by_gender[soldier.gender];
    ++group.people;
    group.graded_sum += found.readings[0].value;
    group.plain_sum +=
        scaled(*parse_decimal(soldier.ball_length)) / scaled(*parse_decimal(soldier.foot_length));
    const Rule& rule = program.rules.rules[found.rule];
    ++group.bands[rule.bands[found.readings[0].band].name.value];
  }
  return by_gender;
}

TEST_CASE("the mean place of the joint is that of plain arithmetic over the file") {
  auto groups = survey();
  REQUIRE(groups["Male"].people == 205);
  REQUIRE(groups["Female"].people == 199);
  for (const auto& [gender, group] : groups) {
    CAPTURE(gender);
    CHECK(group.graded_sum == Approx(group.plain_sum).epsilon(1e-9));
  }
}

// Figures of the whole survey: 74.1 % with a standard deviation of 1.5 for men and 73.9 % with 1.3
// for women. Means of samples of 205 and 199 lie within three standard errors, 0.31 and 0.28.
TEST_CASE("the joint lies where ANSUR II found it, at 74.1 % in men and 73.9 % in women") {
  auto groups = survey();
  CHECK(std::fabs(100 * groups["Male"].graded_sum / 205 - 74.1) < 0.31);
  CHECK(std::fabs(100 * groups["Female"].graded_sum / 199 - 73.9) < 0.28);
}

// Counted apart, in whole numbers, by
//   awk -F, 'NR>1{ if (1000*$7<710*$5) b[$1]++; else if (1000*$7>770*$5) f[$1]++; else u[$1]++ }
//            END{ for (g in u) print g, b[g]+0, u[g], f[g]+0 }' ansur2_foot_sample.csv
// which prints `Male 5 197 3` and `Female 1 197 1`.
TEST_CASE("as many feet have their joint outside 71 to 77 % as were counted apart") {
  auto groups = survey();
  using Bands = std::map<std::string, int>;
  CHECK(groups["Male"].bands == Bands{{"far_back", 5}, {"usual", 197}, {"far_forward", 3}});
  CHECK(groups["Female"].bands == Bands{{"far_back", 1}, {"usual", 197}, {"far_forward", 1}});
}

// A rule set with a band for each whole step of 5 mm, as ISO 9407 has for general footwear.
std::string steps_of_five() {
  std::string bands;
  for (int step = 215; step <= 315; step += 5) {
    bands += fmt::format("      - {{name: step_{}, below: {}.5 mm, earns: {}}}\n", step, step + 2,
                         step == 215 ? "0" : "50 %");
  }
  return "title: Steps\nsections: {feet: {title: Feet}}\n"
         "traits: {foot_length: {ask: Length, measure: mm, per: foot}, "
         "right_length: {ask: Right, derive: right(foot_length)}, "
         "ball_length: {ask: Ball, measure: mm, per: foot}}\n"
         "rules:\n  step:\n    section: feet\n    weight: 1\n    reads: right_length\n"
         "    because: Sizes come in steps.\n    source: ISO 9407:2019 (secondary source)\n"
         "    bands:\n" +
         bands +
         "      - {name: beyond, earns: 100 %}\n"
         "grades: {all: {from: 50, means: All.}, none: {from: 0, means: None.}}\n";
}

// Counted apart by
//   awk -F, 'NR>1{ c[5*int(($5+2)/5)]++ } END{ for (k in c) print k, c[k] }' | sort -n
TEST_CASE("the feet fall into the steps of 5 mm as they were counted apart") {
  Sources sources;
  const auto find = [](std::string_view, std::string_view) -> Parsed<FoundFile> {
    return FoundFile{"steps.yaml", "steps.yaml", steps_of_five()};
  };
  LoadedRules loaded = load_rules("steps", find, sources);
  const auto program = compile(std::move(loaded.rules), std::move(loaded.diagnostics));
  REQUIRE(program);
  std::map<std::string, int> counts;
  for (const Soldier& soldier : soldiers()) {
    const Verdict verdict = grade(*program, record_of(*program, soldier));
    const SideReading& reading = verdict.findings[0].readings[0];
    ++counts[program->rules.rules[0].bands[reading.band].name.value];
  }
  CHECK(counts == std::map<std::string, int>{{"step_220", 3},
                                             {"step_225", 4},
                                             {"step_230", 8},
                                             {"step_235", 27},
                                             {"step_240", 26},
                                             {"step_245", 39},
                                             {"step_250", 38},
                                             {"step_255", 43},
                                             {"step_260", 36},
                                             {"step_265", 41},
                                             {"step_270", 36},
                                             {"step_275", 34},
                                             {"step_280", 30},
                                             {"step_285", 16},
                                             {"step_290", 11},
                                             {"step_295", 7},
                                             {"step_300", 3},
                                             {"step_305", 1},
                                             {"step_310", 1}});
}

}  // namespace
}  // namespace heelrule
