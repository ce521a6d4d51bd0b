#include "engine/source/show_diagnostic.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

std::string shown(const std::string& text, Span where, std::string message = "wrong",
                  std::string hint = {}) {
  Sources sources;
  sources.add("fit.yaml", text);
  Diagnostics diagnostics;
  diagnostics.error(where, std::move(message), std::move(hint));
  return show(diagnostics, sources);
}

TEST_CASE("a diagnostic shows its place, its line with a mark, and what to do") {
  CHECK(shown("title: Fit\nwieght: 12\n", {0, 11, 17}, "`wieght` is no key of a rule",
              "did you mean `weight`?") ==
        "fit.yaml:2:1: error: `wieght` is no key of a rule\n"
        "    2 | wieght: 12\n"
        "      | ^~~~~~\n"
        "hint: did you mean `weight`?\n");
}

TEST_CASE("the mark stands below its word where letters of two bytes stand before it") {
  CHECK(shown("größe: mn", {0, 9, 11}) ==
        "fit.yaml:1:8: error: wrong\n"
        "    1 | größe: mn\n"
        "      |        ^~\n");
}

TEST_CASE("a mark ends with its line") {
  CHECK(shown("one\ntwo", {0, 1, 7}) ==
        "fit.yaml:1:2: error: wrong\n"
        "    1 | one\n"
        "      |  ^~\n");
}

TEST_CASE("an empty file and its end can be marked") {
  CHECK(shown("", {0, 0, 0}) == "fit.yaml:1:1: error: wrong\n    1 | \n      | ^\n");
  CHECK(shown("a\n", {0, 2, 2}) == "fit.yaml:2:1: error: wrong\n    2 | \n      | ^\n");
}

TEST_CASE("bytes of the file never reach the terminal as they are") {
  CHECK(shown("a\x1B[2J: b", {0, 1, 2}, "`\x1B` stands here", "leave \u202E out") ==
        "fit.yaml:1:2: error: `\\x1b` stands here\n"
        "    1 | a\\x1b[2J: b\n"
        "      |  ^~~~\n"
        "hint: leave \\u202e out\n");
}

// Written out letter by letter: g++ 12 warns wrongly of joined strings whose length it knows.
std::string repeated(int count, char letter) {
  std::string text;
  for (int i = 0; i < count; ++i) {
    text.push_back(letter);
  }
  return text;
}

TEST_CASE("of a long line the part around the mark is shown") {
  const std::string text = repeated(300, 'a') + "HERE" + repeated(300, 'b');
  CHECK(shown(text, {0, 300, 304}) ==
        "fit.yaml:1:301: error: wrong\n"
        "    1 | …" +
            repeated(80, 'a') + "HERE" + repeated(76, 'b') +
            "…\n"
            "      | " +
            repeated(81, ' ') + "^~~~\n");
}

TEST_CASE("a long line is never cut inside a character") {
  std::string text;
  for (int i = 0; i < 200; ++i) {
    text += "€";
  }
  const std::string all = shown(text, {0, 301, 303});
  CHECK(all.find("\\x") == std::string::npos);
}

TEST_CASE("a long line of bytes that are no characters can be shown") {
  const std::string text = repeated(800, '\x82');
  const std::string all = shown(text, {0, 500, 501});
  CHECK(all.find("^~~~\n") != std::string::npos);
}

TEST_CASE("notes stand between the line and the hint, each with its own place") {
  Sources sources;
  sources.add("a.yaml", "weight: 5");
  sources.add("b.yaml", "weight: 7");
  Diagnostics diagnostics;
  diagnostics.warning({0, 8, 9}, "two say different things", "decide it",
                      {{{1, 8, 9}, "the other is here"}});
  CHECK(show(diagnostics, sources) ==
        "a.yaml:1:9: warning: two say different things\n"
        "    1 | weight: 5\n"
        "      |         ^\n"
        "b.yaml:1:9: note: the other is here\n"
        "    1 | weight: 7\n"
        "      |         ^\n"
        "hint: decide it\n");
}

}  // namespace
}  // namespace heelrule
