// For each rule of a file that ships, tests/shipped/SET/RULE holds records of which the first line
// says what they must come to:
//
//     # expect: toe_allowance part 50 %
//
// `pass.yaml` passes in full, `fail.yaml` fails, and `edge.yaml` lies on the edge. A rule that
// cannot fail has `worst.yaml` in place of `fail.yaml`: the least that it can earn.
#include <catch2/catch.hpp>
#include <filesystem>
#include <set>

#include "engine/quantity/quantity.hpp"
#include "engine/report/account.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/shipped/shipped.hpp"

namespace heelrule {
namespace {

namespace fs = std::filesystem;

const fs::path records = HEELRULE_TEST_SHIPPED;

struct Expected {
  std::string rule;
  std::string status;
  double credit = 0;  // millionths
};

Expected expectation(const std::string& text) {
  constexpr std::string_view mark = "# expect: ";
  REQUIRE(text.starts_with(mark));
  const std::string line = text.substr(mark.size(), text.find('\n') - mark.size());
  const std::size_t first = line.find(' ');
  const std::size_t second = line.find(' ', first + 1);
  REQUIRE(second != std::string::npos);
  const auto credit = parse_quantity(line.substr(second + 1));
  REQUIRE(credit);
  REQUIRE(credit->unit == Unit::percent);
  return {line.substr(0, first), line.substr(first + 1, second - first - 1),
          credit->stored * full_credit};
}

std::vector<const Finding*> findings_of(const Program& program, const Verdict& verdict,
                                        const std::string& rule) {
  std::vector<const Finding*> found;
  for (const Finding& finding : verdict.findings) {
    if (program.rules.rules[finding.rule].name == rule) {
      found.push_back(&finding);
    }
  }
  return found;
}

double least_credit(const Program& program, std::size_t rule) {
  double least = full_credit;
  for (const Credit& credit : program.rule_programs[rule].scale.credits) {
    least = std::min({least, credit.from, credit.to});
  }
  return least;
}

// Of a rule whose sides are findings of their own, the one that earns less.
const Finding& the_finding(const std::vector<const Finding*>& found) {
  return **std::min_element(found.begin(), found.end(), [](const Finding* a, const Finding* b) {
    return a->credit < b->credit;
  });
}

// A value on a cut point; of levels, one beside a level that earns something else.
void check_edge(const Program& program, const Finding& finding) {
  const RuleProgram& rule = program.rule_programs[finding.rule];
  const std::vector<Credit>& credits = rule.scale.credits;
  const auto is_edge = [&](const SideReading& reading) {
    if (!rule.cuts.empty()) {
      return std::find(rule.cuts.begin(), rule.cuts.end(), reading.value) != rule.cuts.end();
    }
    const std::size_t at = reading.band;
    return (at > 0 && credits[at - 1] != credits[at]) ||
           (at + 1 < credits.size() && credits[at + 1] != credits[at]);
  };
  CHECK(std::any_of(finding.readings.begin(), finding.readings.end(), is_edge));
}

void check_record(const Program& program, const std::string& rule, const fs::path& path) {
  CAPTURE(path.string());
  if (!fs::exists(path)) {
    FAIL_CHECK("there is no such record");
    return;
  }
  const std::string text = content_of(path.string());
  const Expected expected = expectation(text);
  CHECK(expected.rule == rule);
  const Inspection inspection = record_for(program, path.string(), text);
  CHECK(inspection.rules == program.rules.name);
  const Verdict verdict = grade(program, inspection);
  const auto all = findings_of(program, verdict, rule);
  REQUIRE_FALSE(all.empty());
  const Finding& finding = the_finding(all);
  CHECK(in_words(finding.status) == expected.status);
  CHECK(finding.credit == expected.credit);
  const std::string kind = path.stem().string();
  if (kind == "pass") {
    CHECK(finding.status == Status::pass);
  } else if (kind == "fail") {
    CHECK(finding.status == Status::fail);
  } else if (kind == "worst") {
    CHECK(least_credit(program, finding.rule) > 0);
    CHECK(finding.credit == least_credit(program, finding.rule));
  } else {
    check_edge(program, finding);
  }
}

TEST_CASE("every rule that ships has a record that passes, one that fails and one on the edge") {
  int checked = 0;
  for (const std::string& rule_set : shipped_rule_sets()) {
    const Program program = shipped_program(rule_set);
    for (const std::string& rule : rules_in_file(rule_set)) {
      const fs::path folder = records / rule_set / rule;
      check_record(program, rule, folder / "pass.yaml");
      check_record(program, rule, folder / "edge.yaml");
      const bool cannot_fail = fs::exists(folder / "worst.yaml");
      check_record(program, rule, folder / (cannot_fail ? "worst.yaml" : "fail.yaml"));
      ++checked;
    }
  }
  CHECK(checked >= 60);
}

TEST_CASE("no record is left over from a rule that no longer ships") {
  for (const auto& set : fs::directory_iterator(records)) {
    if (!set.is_directory()) {
      continue;
    }
    const auto known = shipped_rule_sets();
    const std::string name = set.path().filename().string();
    CAPTURE(name);
    REQUIRE(std::find(known.begin(), known.end(), name) != known.end());
    const auto rules = rules_in_file(name);
    for (const auto& rule : fs::directory_iterator(set.path())) {
      CAPTURE(rule.path().string());
      CHECK(std::find(rules.begin(), rules.end(), rule.path().filename().string()) != rules.end());
      for (const auto& record : fs::directory_iterator(rule.path())) {
        const std::set<std::string> kinds{"pass.yaml", "edge.yaml", "fail.yaml", "worst.yaml"};
        CHECK(kinds.count(record.path().filename().string()) == 1);
      }
    }
  }
}

}  // namespace
}  // namespace heelrule
