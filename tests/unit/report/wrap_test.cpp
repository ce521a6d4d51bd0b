#include "engine/report/wrap.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

TEST_CASE("lines break at blanks and stay within the width") {
  CHECK(wrapped("red and blue", 2, "- ", 8) == "- red\n  and\n  blue\n");
  CHECK(wrapped("red and blue", 2, "- ", 9) == "- red and\n  blue\n");
  CHECK(wrapped("red and blue", 2, "- ", 14) == "- red and blue\n");
}

TEST_CASE("runs of blanks, tabs and line breaks become one blank") {
  CHECK(wrapped("  red \t and\r\n\nblue  ", 0, "") == "red and blue\n");
}

TEST_CASE("a text without words is an empty line after its beginning") {
  CHECK(wrapped("", 4, "  - ") == "  - \n");
  CHECK(wrapped(" \n ", 0, "") == "\n");
}

TEST_CASE("a word that is longer than a line stays whole on a line of its own") {
  CHECK(wrapped("see https://example.org/a now", 1, "", 10) ==
        "see\n https://example.org/a\n now\n");
}

TEST_CASE("the width counts characters and not bytes") {
  CHECK(wrapped("größe größe", 0, "", 11) == "größe größe\n");
  CHECK(wrapped("größe größe", 0, "", 10) == "größe\ngröße\n");
  CHECK(wrapped("靴下 靴下", 0, "", 5) == "靴下 靴下\n");
}

TEST_CASE("combining marks take no column, and no more than four stay on a letter") {
  const std::string acute = "\xcc\x81";
  CHECK(wrapped("e" + acute + " e" + acute, 0, "", 3) == "e" + acute + " e" + acute + "\n");
  std::string heap;
  std::string four;
  for (int i = 0; i < 200; ++i) {
    heap += acute;
    four += i < 4 ? acute : "";
  }
  CHECK(wrapped("e" + heap + "f" + heap, 0, "") == "e" + four + "f" + four + "\n");
}

TEST_CASE("what a terminal would obey is shown and not sent") {
  CHECK(wrapped("a\x1b[31mred", 0, "") == "a\\x1b[31mred\n");
  CHECK(wrapped("a\xc2\x9b"
                "2Jb",
                0, "") == "a\\x9b2Jb\n");
  CHECK(wrapped("ab\xe2\x80\xae"
                "cd",
                0, "") == "ab\\u202ecd\n");
  CHECK(wrapped("\x80 \xff", 0, "") == "\\x80 \\xff\n");
}

TEST_CASE("a report's lines hold at most 80 columns") {
  std::string words;
  for (int i = 0; i < 400; ++i) {
    words += std::string(static_cast<std::size_t>(1 + i * i % 13), 'x') + " ";
  }
  const std::string lines = wrapped(words, 6, "      ");
  std::size_t longest = 0;
  for (std::size_t at = 0; at < lines.size();) {
    const std::size_t end = lines.find('\n', at);
    longest = std::max(longest, end - at);
    at = end + 1;
  }
  CHECK(longest <= 80);
  CHECK(longest > 80 - 13);
}

}  // namespace
}  // namespace heelrule
