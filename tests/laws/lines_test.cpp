// Many verdicts in lines say what each report says alone.
#include <catch2/catch.hpp>

#include "engine/report/json_report.hpp"
#include "engine/report/verdict_lines.hpp"
#include "engine/scoring/block.hpp"
#include "engine/scoring/decide.hpp"
#include "engine/scoring/fill_row.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/laws/outline.hpp"
#include "tests/laws/random_inspection.hpp"
#include "tests/laws/random_rules.hpp"

namespace heelrule {
namespace {

// JSON without the white space between its tokens.
std::string squeezed(const std::string& json) {
  std::string text;
  bool inside = false;
  for (std::size_t i = 0; i < json.size(); ++i) {
    const char c = json[i];
    if (inside && c == '\\') {
      text += json.substr(i++, 2);
      continue;
    }
    inside = inside != (c == '"');
    if (inside || (c != ' ' && c != '\n')) {
      text += c;
    }
  }
  return text + "\n";
}

// The value of a key of the outermost object.
std::string part(const std::string& line, const std::string& key) {
  const std::string start = ",\"" + key + "\":";
  std::size_t depth = 0;
  std::size_t begin = std::string::npos;
  bool inside = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const char c = line[i];
    if (inside && c == '\\') {
      ++i;
      continue;
    }
    if (depth == 1 && !inside && begin != std::string::npos && i > begin &&
        (c == ',' || c == '}')) {
      return line.substr(begin, i - begin);
    }
    if (depth == 1 && !inside && line.compare(i, start.size(), start) == 0) {
      begin = i + start.size();
    }
    inside = inside != (c == '"');
    if (!inside) {
      depth += (c == '{' || c == '[') ? 1 : 0;
      depth -= (c == '}' || c == ']') ? 1 : 0;
    }
  }
  return "";
}

// A list of findings without those that passed or do not apply.
std::string without_passed(const std::string& findings) {
  const std::string start = R"({"rule":")";
  std::string kept;
  for (std::size_t at = 1; at + 1 < findings.size();) {
    std::size_t end = findings.find("}," + start, at);
    end = end == std::string::npos ? findings.size() - 1 : end + 1;
    const std::string one = findings.substr(at, end - at);
    if (one.find(R"("status":"pass")") == std::string::npos &&
        one.find(R"("status":"does not apply")") == std::string::npos) {
      kept += (kept.empty() ? "" : ",") + one;
    }
    at = end + 1;
  }
  return "[" + kept + "]";
}

Inspection random_record(const RuleSet& rules, Dice& dice) {
  Inspection inspection = random_inspection(rules, dice);
  inspection.client = dice.one_in(2) ? "C-014" : "C-<\"15\">";
  inspection.note = dice.one_in(3) ? "Zu spät\tgemessen" : "";
  for (Observation& seen : inspection.observations) {
    if (auto* not_seen = std::get_if<NotSeen>(&seen.value); not_seen != nullptr && dice.one_in(3)) {
      not_seen->reason = dice.one_in(2) ? "sole was wet" : "out of time";
    }
    if (dice.one_in(12)) {
      seen.note = dice.one_in(2) ? "creased" : "new";
    }
  }
  return inspection;
}

TEST_CASE("a full line is the report without its white space") {
  Dice dice(80);
  for (int i = 0; i < 120; ++i) {
    const Program program = random_program(dice);
    VerdictLines lines(program, {}, Detail::full);
    for (int row = 0; row < 40; ++row) {
      const Inspection inspection = random_record(program.rules, dice);
      const Verdict verdict = grade(program, inspection);
      std::string line;
      lines.append(inspection, verdict, line);
      INFO(outline(program.rules) << outline(program.rules, inspection));
      REQUIRE(line == squeezed(json_report(program, inspection, verdict, {})));
    }
  }
}

TEST_CASE("a short line says of the same keys the same") {
  Dice dice(81);
  for (int i = 0; i < 60; ++i) {
    const Program program = random_program(dice);
    VerdictLines full(program, {}, Detail::full);
    VerdictLines failed(program, {}, Detail::failed);
    VerdictLines brief(program, {}, Detail::brief);
    Block block(program);
    Verdict shortened;
    for (int row = 0; row < 20; ++row) {
      const Inspection inspection = random_record(program.rules, dice);
      const Verdict verdict = grade(program, inspection);
      fill_row(program, inspection, block, 0);
      evaluate(program, block);
      std::string whole;
      std::string some;
      std::string least;
      full.append(inspection, verdict, whole);
      decide(program, block, 0, Detail::failed, shortened);
      failed.append(inspection, shortened, some);
      decide(program, block, 0, Detail::brief, shortened);
      brief.append(inspection, shortened, least);
      for (const char* key : {"version", "rules", "inspection", "see_practitioner_first",
                              "referrals", "grade", "score", "cautions"}) {
        CAPTURE(key);
        REQUIRE_FALSE(part(whole, key).empty());
        REQUIRE(part(some, key) == part(whole, key));
        REQUIRE(part(least, key) == part(whole, key));
      }
      for (const char* key : {"advice", "advice_held_back", "would_settle"}) {
        REQUIRE(part(some, key) == part(whole, key));
        REQUIRE(part(least, key).empty());
      }
      REQUIRE(part(some, "findings") == without_passed(part(whole, "findings")));
    }
  }
}

}  // namespace
}  // namespace heelrule
