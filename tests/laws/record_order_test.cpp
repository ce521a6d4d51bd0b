#include <catch2/catch.hpp>
#include <sstream>

#include "engine/scoring/grade.hpp"
#include "tests/laws/dice.hpp"
#include "tests/shipped/shipped.hpp"

namespace heelrule {
namespace {

// The lines of a record from `found:` on, each with the deeper ones that go on from it.
struct Record {
  std::string head;
  std::vector<std::string> found;
};

Record taken_apart(const std::string& text) {
  Record record;
  const std::size_t found = text.find("\nfound:\n") + 8;
  record.head = text.substr(0, found);
  std::istringstream lines(text.substr(found));
  for (std::string line; std::getline(lines, line);) {
    const bool is_empty = line.find_first_not_of(' ') == std::string::npos;
    const bool is_comment = line.starts_with("  #");
    if (is_empty || is_comment) {
      continue;
    }
    if (line.starts_with("   ") && !record.found.empty()) {
      record.found.back() += line + "\n";
    } else {
      record.found.push_back(line + "\n");
    }
  }
  return record;
}

std::string in_any_order(Record record, Dice& dice) {
  dice.shuffle(record.found);
  std::string text = record.head;
  for (const std::string& line : record.found) {
    text += line;
  }
  return text;
}

TEST_CASE("the order in which a record was written changes nothing in its verdict") {
  Dice dice(25);
  for (const auto& [client, rule_set] :
       {std::pair("office-worker", "everyday"), std::pair("child", "child"),
        std::pair("older-adult", "older-adult")}) {
    const Program program = shipped_program(rule_set);
    const std::string text =
        content_of(std::string(HEELRULE_TEST_EXAMPLES "/") + client + "/inspection.yaml");
    const Record record = taken_apart(text);
    REQUIRE(record.found.size() > 20);
    const Verdict verdict = grade(program, record_for(program, client, text));
    for (int turn = 0; turn < 5; ++turn) {
      const Inspection other = record_for(program, client, in_any_order(record, dice));
      REQUIRE((grade(program, other) == verdict));
    }
  }
}

}  // namespace
}  // namespace heelrule
