// The windows of the rule sets that ship, against the figures that their rules name as sources.
#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>

#include "engine/fitting/toe_window.hpp"
#include "engine/reading/load_rules.hpp"

namespace heelrule {
namespace {

ToeWindow window_of(std::string_view name) {
  Sources sources;
  const auto find = [](std::string_view wanted, std::string_view) -> Parsed<FoundFile> {
    const std::string path = std::string(HEELRULE_TEST_RULES "/") + std::string(wanted) + ".yaml";
    std::ifstream file(path);
    return FoundFile{path, path, std::string(std::istreambuf_iterator<char>(file), {})};
  };
  const LoadedRules loaded = load_rules(name, find, sources);
  REQUIRE(loaded.complete);
  const auto window = toe_window(loaded.rules);
  REQUIRE(window);
  return *window;
}

// Chantelau 2002, McInnes 2012, Chicharro-Luna 2020 in the review of Jones 2020, J Foot Ankle Res
// 13:70: 10 to 15 mm. Also common practice.
TEST_CASE("an adult's shoe is 10 to 15 mm longer than the foot") {
  CHECK(window_of("everyday").least == Millimetres(10));
  CHECK(window_of("everyday").most == Millimetres(15));
}

// 10 to 17 mm with 12 as the aim (secondary source, partly from memory); at least 5 mm,
// González-Elena 2019 (BMC MSD, s12891-019-2591-3).
TEST_CASE("a child's shoe is 10 to 17 mm longer, and used up below 5 mm") {
  CHECK(window_of("child").used_up == Millimetres(5));
  CHECK(window_of("child").least == Millimetres(10));
  CHECK(window_of("child").most == Millimetres(17));
}

// IWGDF 2019 in the review of Jones 2020: 10 to 20 mm, checked standing.
TEST_CASE("the shoe of a foot at risk is 10 to 20 mm longer") {
  CHECK(window_of("at-risk-foot").least == Millimetres(10));
  CHECK(window_of("at-risk-foot").most == Millimetres(20));
}

}  // namespace
}  // namespace heelrule
