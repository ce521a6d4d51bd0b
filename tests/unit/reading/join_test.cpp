#include "engine/reading/join.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/yaml_tree.hpp"

namespace heelrule {
namespace {

// Trees of one test, each from a source of its own, so that places tell them apart.
class Trees {
 public:
  Node read(const std::string& text) {
    const auto source = sources_.add("t", text);
    return *read_yaml(sources_, source, diagnostics_);
  }

 private:
  Sources sources_;
  Diagnostics diagnostics_;
};

std::string text_at(const Node& tree, std::string_view outer, std::string_view inner) {
  const Node* node = tree.find(outer);
  node = node == nullptr ? nullptr : node->find(inner);
  return node == nullptr ? "" : node->text;
}

std::vector<Disagreement> join(Node& base, const Node& other) {
  std::vector<Disagreement> disagreements;
  join_beside(base, other, disagreements);
  return disagreements;
}

TEST_CASE("what is laid over joins maps key by key and replaces the rest whole") {
  Trees trees;
  Node base = trees.read("x: {weight: 5, list: [a, b]}\ny: 1\n");
  lay_over(base, trees.read("x: {weight: 7, list: [c]}\nz: 2\n"));
  CHECK(text_at(base, "x", "weight") == "7");
  CHECK(base.find("x")->find("list")->items.size() == 1);
  CHECK(base.find("y")->text == "1");
  CHECK(base.find("z")->text == "2");
}

TEST_CASE("two that stand side by side may say the same, or different keys") {
  Trees trees;
  Node base = trees.read("x: {a: 1, b: [1, 2]}\n");
  CHECK(join(base, trees.read("x: {a: 1, b: [1, 2], c: 3}\n")).empty());
  CHECK(text_at(base, "x", "c") == "3");
}

TEST_CASE("two that disagree are noted with the path and both places") {
  Trees trees;
  Node base = trees.read("x: {a: 1, b: [1, 2]}\n");
  const auto found = join(base, trees.read("x: {a: 2, b: [2, 1]}\n"));
  REQUIRE(found.size() == 2);
  CHECK(found[0].path == "x.a");
  CHECK(found[0].first == Span{0, 7, 8});
  CHECK(found[0].second == Span{1, 7, 8});
  CHECK(found[1].path == "x.b");
  CHECK(text_at(base, "x", "a") == "1");
}

TEST_CASE("an override beats what it overrides, whichever comes first") {
  Trees trees;
  const Node root = trees.read("x: {a: 1}\n");
  Node child = root;
  lay_over(child, trees.read("x: {a: 2}\n"));
  Node grandchild = child;
  lay_over(grandchild, trees.read("x: {a: 3}\n"));
  for (const Node* elder : {&root, static_cast<const Node*>(&child)}) {
    Node first = *elder;
    CHECK(join(first, grandchild).empty());
    CHECK(text_at(first, "x", "a") == "3");
    Node second = grandchild;
    CHECK(join(second, *elder).empty());
    CHECK(text_at(second, "x", "a") == "3");
  }
}

TEST_CASE("two overrides of the same thing disagree") {
  Trees trees;
  const Node root = trees.read("x: {a: 1}\n");
  Node one = root;
  lay_over(one, trees.read("x: {a: 2}\n"));
  Node other = root;
  lay_over(other, trees.read("x: {a: 3}\n"));
  CHECK(join(one, other).size() == 1);
}

TEST_CASE("a map and a text at the same key disagree") {
  Trees trees;
  Node base = trees.read("x: {a: 1}\n");
  const auto found = join(base, trees.read("x: 5\n"));
  REQUIRE(found.size() == 1);
  CHECK(found[0].path == "x");
}

TEST_CASE("a whole thing or a single key can be dropped") {
  Trees trees;
  Node tree = trees.read("rules: {x: {must: {caps: d}, weight: 5}, y: {}}\n");
  CHECK(drop(tree, "rules.x.must"));
  CHECK(tree.find("rules")->find("x")->find("must") == nullptr);
  CHECK(text_at(*tree.find("rules"), "x", "weight") == "5");
  CHECK(drop(tree, "rules.x"));
  CHECK(tree.find("rules")->find("x") == nullptr);
  CHECK_FALSE(drop(tree, "rules.x"));
  CHECK_FALSE(drop(tree, "rules.y.must"));
  CHECK_FALSE(drop(tree, ""));
  CHECK_FALSE(drop(tree, "traits.x"));
}

TEST_CASE("a file decides a path where it says it, or replaces a whole that it lies in") {
  Trees trees;
  const Node own = trees.read("rules: {x: {weight: 5}, y: none}\n");
  CHECK(decides(own, "rules.x.weight"));
  CHECK(decides(own, "rules.y.weight"));
  CHECK_FALSE(decides(own, "rules.x.must"));
  CHECK_FALSE(decides(own, "traits.x"));
}

}  // namespace
}  // namespace heelrule
