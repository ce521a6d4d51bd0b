#include "engine/page/tree_json.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/json_tree.hpp"
#include "tests/unit/page/loaded.hpp"

namespace heelrule {
namespace {

std::string written(const Node& tree) {
  JsonWriter json(JsonWriter::Layout::compact);
  write_tree(json, tree);
  return json.take();
}

TEST_CASE("a tree is written as JSON and guesses nothing from how a text looks") {
  CHECK(written(tree_of("a: [yes, 010, .nan, '']\nb: {c d: \"é\\\"<\"}\n")) ==
        R"({"a":["yes","010",".nan",""],"b":{"c d":"é\"\u003c"}})");
  CHECK(written(tree_of("a:\n")) == R"({"a":null})");
}

TEST_CASE("the joined tree of every part of a rule set says the same when it is read again") {
  for (const char* name : {"everyday", "child", "work"}) {
    const Node tree = loaded_shipped(name).tree;
    REQUIRE(tree.entries.size() > 5);
    Sources sources;
    Diagnostics diagnostics;
    const auto source = sources.add("page", written(tree));
    const auto again = read_json(sources, source, diagnostics);
    REQUIRE(again);
    CHECK(same_content(*again, tree));
  }
}

}  // namespace
}  // namespace heelrule
