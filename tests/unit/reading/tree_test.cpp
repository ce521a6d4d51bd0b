#include "engine/reading/tree.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/yaml_tree.hpp"

namespace heelrule {
namespace {

Node read(const std::string& text) {
  Sources sources;
  Diagnostics diagnostics;
  return *read_yaml(sources, sources.add("t", text), diagnostics);
}

TEST_CASE("a key of a map is found, and nothing is found in what is no map") {
  const Node map = read("a: {b: 1}\n");
  REQUIRE(map.find("a") != nullptr);
  CHECK(map.find("a")->find("b")->text == "1");
  CHECK(map.find("b") == nullptr);
  CHECK(map.find("a")->find("b")->find("c") == nullptr);
}

TEST_CASE("two pieces say the same wherever they stand, and the order of keys counts") {
  CHECK(same_content(read("a: [1, {b: c}]\n"), read("# remark\na:\n  - '1'\n  - b: c\n")));
  CHECK_FALSE(same_content(read("a: 1\n"), read("a: 2\n")));
  CHECK_FALSE(same_content(read("a: 1\n"), read("b: 1\n")));
  CHECK_FALSE(same_content(read("[a]\n"), read("[a, b]\n")));
  CHECK_FALSE(same_content(read("{a: }\n"), read("{a: ''}\n")));
  CHECK_FALSE(same_content(read("{a: 1, b: 2}\n"), read("{b: 2, a: 1}\n")));
}

TEST_CASE("each kind of piece has a word") {
  CHECK(in_words(Node::Kind::nothing) == "nothing");
  CHECK(in_words(Node::Kind::text) == "a text");
  CHECK(in_words(Node::Kind::list) == "a list");
  CHECK(in_words(Node::Kind::map) == "a map");
}

}  // namespace
}  // namespace heelrule
