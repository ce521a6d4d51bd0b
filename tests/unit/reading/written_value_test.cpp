#include "engine/reading/written_value.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/yaml_tree.hpp"

namespace heelrule {
namespace {

std::string words(const std::string& yaml) {
  Sources sources;
  Diagnostics diagnostics;
  const auto tree = read_yaml(sources, sources.add("r", "v: " + yaml + "\n"), diagnostics);
  REQUIRE(tree);
  return written_words(tree->entries.front().value);
}

}  // namespace

TEST_CASE("a recorded value is put on one line") {
  CHECK(words("243 mm") == "243 mm");
  CHECK(words("[246, 247, 246 mm]") == "246, 247, 246 mm");
  CHECK(words("not seen") == "not seen");
  CHECK(words("{not seen: sole was wet}") == "not seen: sole was wet");
  CHECK(words("{cotton: 80 %, elastane: 20 %}") == "cotton 80 %, elastane 20 %");
  CHECK(words("{left: 1 mm, right: [2, 3 mm]}") == "left 1 mm, right 2, 3 mm");
  CHECK(words("{value: firm, note: creased}") == "firm (note: creased)");
  CHECK(words("{value: 131 mm, confirmed: yes, doubt: 2 mm}") ==
        "131 mm (confirmed: yes; doubt: 2 mm)");
}

TEST_CASE("a line becomes the tree of its value") {
  Trait trait;
  trait.kind = MeasureKind{Unit::millimetre, {}, {}};
  CHECK(written_words(written_value(trait, "246; 247 mm", ";", {})) == "246, 247 mm");
  CHECK(written_value(trait, "246; 247 mm", ";", {}).is_list());
  CHECK(written_value(trait, "246 mm", ";", {}).is_text());
  trait.kind = FibresKind{};
  CHECK(written_words(written_value(trait, "cotton 80 %, 20 % elastane", ", ", {})) ==
        "cotton 80 %, elastane 20 %");
  CHECK(written_value(trait, "not seen", ", ", {}).is_text());
}

}  // namespace heelrule
