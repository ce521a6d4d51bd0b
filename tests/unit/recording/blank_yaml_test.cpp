#include "engine/recording/blank_yaml.hpp"

#include <catch2/catch.hpp>

#include "engine/recording/bench_order.hpp"
#include "engine/source/characters.hpp"
#include "tests/shipped/shipped.hpp"

namespace heelrule {

TEST_CASE("a blank sheet reads as it is, and nothing on it was seen") {
  for (const std::string& name : shipped_rule_sets()) {
    CAPTURE(name);
    const auto program = shipped_program(name);
    const Inspection blank = record_for(program, "blank.yaml", blank_yaml(program, {}));
    std::size_t values = 0;
    for (const BenchSection& section : bench_order(program)) {
      for (const std::size_t trait : section.traits) {
        values += has_sides(program.rules.traits[trait].per) ? 2 : 1;
      }
    }
    CHECK(blank.rules == name);
    CHECK(blank.observations.size() == values);
    for (const Observation& one : blank.observations) {
      CHECK(std::holds_alternative<NotSeen>(one.value));
    }
  }
}

TEST_CASE("a blank sheet tells how to take each trait and what may be written") {
  const std::string text = blank_yaml(shipped_program("everyday"), {});
  CHECK(text.find("  # Standing: length from heel to longest toe\n"
                  "  #   Both feet on the floor and weight even, eyes ahead; read at the longest\n"
                  "  #   toe, with the heel still at the stop.\n"
                  "  # > in mm, cm or in; plausible is 80 mm to 340 mm\n"
                  "  foot_length: {left: not seen, right: not seen}\n") != std::string::npos);
  CHECK(text.find("  #   - overlapping: a toe lies over or under its neighbour\n") !=
        std::string::npos);
  CHECK(text.find("  # ==== Feet, seated ====\n") != std::string::npos);
  CHECK(text.find("\nsafety:\n") < text.find("\nfound:\n"));
}

TEST_CASE("no line of a blank sheet is wider than a page") {
  const std::string text = blank_yaml(shipped_program("at-risk-foot"), {});
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = text.find('\n', begin);
    CHECK(character_count(text.substr(begin, end - begin)) <= 80);
    begin = end + 1;
  }
}

}  // namespace heelrule
