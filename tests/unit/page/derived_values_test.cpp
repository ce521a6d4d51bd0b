#include "engine/page/derived_values.hpp"

#include <catch2/catch.hpp>

#include "engine/page/sound_answers.hpp"
#include "tests/unit/page/loaded.hpp"

namespace heelrule {
namespace {

TEST_CASE("what can be worked out on a side is, and the other side waits") {
  const Program program = loaded_program(small_rules()).program;
  const auto values = [&](const std::string& found) {
    return derived_values(
        program,
        sound_answers(tree_of("inspection: {}\nfound: " + found), program.rules).inspection);
  };
  CHECK(values("{insole_length: 255 mm}").empty());
  const auto one = values("{insole_length: 255 mm, foot_length: {right: [246, 247, 246 mm]}}");
  REQUIRE(one.size() == 1);
  CHECK(program.rules.traits[one[0].trait].name == "space");
  CHECK(one[0].side == Side::right);
  CHECK(one[0].words == "8.7 mm");  // 255 − 739/3
  CHECK(values("{insole_length: 255 mm, foot_length: 243 mm}").size() == 2);
}

}  // namespace
}  // namespace heelrule
