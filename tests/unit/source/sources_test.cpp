#include "engine/source/sources.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("lines and columns count from 1, columns in characters") {
  Sources sources;
  const auto source = sources.add("fit.yaml", "é: x\nzweite: größer\n");
  CHECK(sources.position(source, 0) == LinePosition{1, 1});
  CHECK(sources.position(source, 4) == LinePosition{1, 4});  // x: `é` takes two bytes
  CHECK(sources.position(source, 6) == LinePosition{2, 1});
  CHECK(sources.position(source, 19) == LinePosition{2, 13});
}

TEST_CASE("an offset past the end counts as the end") {
  Sources sources;
  const auto source = sources.add("fit.yaml", "one\ntwo");
  CHECK(sources.position(source, 99) == LinePosition{2, 4});
  CHECK(sources.line(source, 99) == "two");
  CHECK(sources.text(Span{source, 4, 99}) == "two");
  CHECK(sources.text(Span{source, 99, 100}).empty());
}

TEST_CASE("a line comes without its line break") {
  Sources sources;
  const auto source = sources.add("fit.yaml", "one\r\n\ntwo\n");
  CHECK(sources.line(source, 1) == "one");
  CHECK(sources.line(source, 5).empty());
  CHECK(sources.line(source, 6) == "two");
  CHECK(sources.line(source, 10).empty());
}

TEST_CASE("each text keeps its name and number") {
  Sources sources;
  const auto first = sources.add("a.yaml", "a");
  const auto second = sources.add("b.yaml", "b");
  CHECK(sources.size() == 2);
  CHECK(sources.name(first) == "a.yaml");
  CHECK(sources.text(second) == "b");
}

}  // namespace
}  // namespace heelrule
