// YAML as a rule author's enemy would write it. The faults of a naive use of yaml-cpp 0.7.0 that
// these tests look for were measured on it; where there is one, its number in the library's list of
// issues, or its CVE, stands beside the test.
#include "engine/reading/yaml_tree.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/text_gate.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

using namespace std::string_literals;

// What a text reads as: texts as they are, lists in `[]`, maps in `{}`, nothing as `-`.
std::string written(const Node& node) {
  std::string text = node.text;
  switch (node.kind) {
    case Node::Kind::nothing:
      return "-";
    case Node::Kind::text:
      return text;
    case Node::Kind::list:
      for (const Node& item : node.items) {
        text += (text.empty() ? "" : ", ") + written(item);
      }
      return "[" + text + "]";
    case Node::Kind::map:
      for (const Entry& entry : node.entries) {
        text += (text.empty() ? "" : ", ") + entry.key.value + ": " + written(entry.value);
      }
      return "{" + text + "}";
  }
  return text;
}

// The tree, or the first line of what is said against it.
std::string reading(const std::string& text) {
  Sources sources;
  Diagnostics diagnostics;
  const auto tree = read_yaml(sources, sources.add("y", text), diagnostics);
  CHECK(tree.has_value() != diagnostics.has_errors());
  if (tree) {
    return written(*tree);
  }
  const std::string said = show(diagnostics, sources);
  return said.substr(0, said.find('\n'));
}

std::size_t fault_count(const std::string& text) {
  Sources sources;
  Diagnostics diagnostics;
  read_yaml(sources, sources.add("y", text), diagnostics);
  return diagnostics.error_count();
}

TEST_CASE("maps, lists and texts are read as they are written") {
  CHECK(reading("a: 1\nb: [x, 'y', \"z\"]\nc:\n  - d: e\n") == "{a: 1, b: [x, y, z], c: [{d: e}]}");
  CHECK(reading("---\na: 1\n...\n") == "{a: 1}");
  CHECK(reading("a: >-\n  one\n  two\nb: |\n  three\n") == "{a: one two, b: three\n}");
  CHECK(reading("a: 1\r\nb: 2\r\n") == "{a: 1, b: 2}");
}

TEST_CASE("nothing is guessed from how a text looks") {
  CHECK(reading(
            "[yes, no, on, Off, y, true, .nan, .inf, 010, 0x1F, 1e3, 1_000, 12:30, 2026-10-03]") ==
        "[yes, no, on, Off, y, true, .nan, .inf, 010, 0x1F, 1e3, 1_000, 12:30, 2026-10-03]");
  CHECK(reading("['12', \" 5\", '']") == "[12,  5, ]");
}

TEST_CASE("nothing is no text") {
  CHECK(reading("{a: , b: ~, c: null, d: ''}") == "{a: -, b: -, c: -, d: }");
}

// Issue 1040: a loop over documents never ends on these.
TEST_CASE("texts on which a loop over documents would not end are refused at once") {
  CHECK(reading(",") ==
        "y:1:1: error: from here on this belongs to nothing before it, and would be dropped");
  CHECK(reading("[a], b") ==
        "y:1:4: error: from here on this belongs to nothing before it, and would be dropped");
  CHECK(reading("&a ,") == "y:1:1: error: an anchor is not part of this language");
  CHECK(reading("!t ,") == "y:1:1: error: a tag is not part of this language");
}

// Issue 1333: the first document is read and the rest silently dropped.
TEST_CASE("nothing after the first document is dropped without a word") {
  CHECK(reading("a: 1\n---\nb: 2") ==
        "y:2:1: error: a second document begins here, and all of it would be dropped");
  CHECK(reading("a: 1\n---\n") ==
        "y:2:1: error: a second document begins here, and all of it would be dropped");
  for (const std::string text : {"- a\nb: 1", "{a: 1}\n{b: 2}", "[a, b] c", "\"a\" b"}) {
    CAPTURE(text);
    CHECK(reading(text).ends_with(
        "from here on this belongs to nothing before it, and would be dropped"));
  }
}

TEST_CASE("a quote that is never closed is found where it opens") {
  CHECK(reading("a: \"abc") == "y:1:4: error: this quote is never closed");
  CHECK(reading("a: 'abc\nb: 1\nc: 2\n") == "y:1:4: error: this quote is never closed");
  CHECK(reading("a: {b: 'it''s', c: \"x}\n") == "y:1:20: error: this quote is never closed");
  CHECK(reading("a: \"abc\nb: \"x\"\n") == "y:1:4: error: this quote is not closed on its line");
}

TEST_CASE("a bracket that is never closed is found where it opens") {
  CHECK(reading("a: [b, c\nd: e\n") == "y:1:4: error: this `[` is never closed");
  CHECK(reading("[a, b") == "y:1:1: error: this `[` is never closed");
  CHECK(reading("a: [b, {c: d]\n") == "y:1:8: error: this `{` is never closed");
  CHECK(reading("- {a: 1\n- {b: 2}\n") == "y:1:3: error: this `{` is never closed");
}

TEST_CASE("brackets and quotes in comments, texts and blocks open nothing") {
  CHECK(reading("a: it's [fine] # \"not [ this\nb: |\n  \"x [y\n    {z\nc: {") ==
        "y:5:4: error: this `{` is never closed");
}

// Issues 60, 651, 826: the first or the last of two values is taken, by the way of asking.
TEST_CASE("a key that comes twice is an error that shows both places") {
  Sources sources;
  Diagnostics diagnostics;
  CHECK_FALSE(read_yaml(sources, sources.add("y", "é: {a: 1, a: 2}\n'é': 3\n"), diagnostics));
  CHECK(show(diagnostics, sources) ==
        "y:1:11: error: the key `a` comes a second time\n"
        "    1 | é: {a: 1, a: 2}\n"
        "      |           ^\n"
        "y:1:5: note: the first one is here\n"
        "    1 | é: {a: 1, a: 2}\n"
        "      |     ^\n"
        "hint: keep one of the two\n"
        "y:2:2: error: the key `é` comes a second time\n"
        "    2 | 'é': 3\n"
        "      |  ^\n"
        "y:1:1: note: the first one is here\n"
        "    1 | é: {a: 1, a: 2}\n"
        "      | ^\n"
        "hint: keep one of the two\n");
}

TEST_CASE("anchors and aliases are refused, so that none can close a circle or multiply") {
  CHECK(reading("&a [*a]") == "y:1:1: error: an anchor is not part of this language");
  CHECK(fault_count("&a [*a]") == 2);
  std::string bomb = "a: &a [x, x]\n";
  for (char c = 'b'; c < 'z'; ++c) {
    bomb += std::string(1, c) + ": &" + c + " [*" + static_cast<char>(c - 1) + ", *" +
            static_cast<char>(c - 1) + "]\n";
  }
  CHECK(reading(bomb) == "y:1:4: error: an anchor is not part of this language");
  CHECK(reading("a: *b") == "y:1:4: error: an alias stands for something written elsewhere");
}

TEST_CASE("tags, and keys that are no texts, are refused") {
  CHECK(reading("a: !!int 5") == "y:1:4: error: a tag is not part of this language");
  CHECK(reading("!!python/object {a: 1}") == "y:1:1: error: a tag is not part of this language");
  CHECK(reading("a: ! 'x'") == "{a: x}");  // says only that the text is one
  CHECK(reading("? [a]\n: b") == "y:1:3: error: a text is due before the `:`");
  CHECK(reading("[a]: b") == "y:1:1: error: a text is due before the `:`");
  CHECK(reading(": b") == "y:1:1: error: a text is due before the `:`");
  CHECK(reading("<<: {a: 1}") == "y:1:1: error: a merge key is not part of this language");
}

TEST_CASE("bytes that are no plain text are refused before a parser sees them") {
  CHECK(reading("a: x\0ny"s) == "y:1:5: error: the file holds a NUL byte");
  CHECK(reading("a\0:\0 \0b\0"s) == "y:1:2: error: the file holds a NUL byte");
  CHECK(reading("\xFF\xFE"s + "a\0"s) ==
        "y:1:1: error: the file holds a byte that is not UTF-8 (0xff)");
  CHECK(reading("é: \xC3") == "y:1:4: error: the file holds a byte that is not UTF-8 (0xc3)");
  CHECK(reading("a: \x1B[2J") == "y:1:4: error: the file holds the control character U+001B");
  CHECK(reading("a: b\rc: d") ==
        "y:1:5: error: the file holds a carriage return without a line feed");
  CHECK(reading("a: \u202E b") == "y:1:4: error: the file holds the text direction control U+202E");
  CHECK(reading("a: b\n\xEF\xBB\xBF"
                "c: d") == "y:2:1: error: the file holds a byte order mark inside the text");
}

TEST_CASE("an escape cannot bring in what the file itself may not hold") {
  CHECK(reading("a: \"\\e[2J\"") == "y:1:4: error: this text holds the control character U+001B");
  CHECK(reading("\"\\0\": a") == "y:1:1: error: this text holds a NUL byte");
  CHECK(reading("a: \"\\u202e\"") ==
        "y:1:4: error: this text holds the text direction control U+202E");
  CHECK(reading("a: \"\\u00e9\\x41\\n\"") == "{a: éA\n}");
}

TEST_CASE("a byte order mark at the start is taken off, and then places are right") {
  const std::string text =
      "\xEF\xBB\xBF"
      "a: b: c";
  CHECK(reading(std::string(without_byte_order_mark(text))) ==
        "y:1:5: error: a `:` stands where none is due");
  CHECK(without_byte_order_mark("a") == "a");
}

TEST_CASE("a tab in the indentation is called a tab") {
  CHECK(reading("a:\n\tb: 1") == "y:2:1: error: a line is indented with a tab");
  CHECK(reading("a:\n  \tb: 1\n  \tc: 2") == "y:2:3: error: a line is indented with a tab");
}

// CVE-2017-5950, CVE-2018-20573, CVE-2018-20574, CVE-2019-6285, CVE-2019-6292: deep nesting.
TEST_CASE("nesting beyond the limit is refused, however deep it is") {
  const auto nested = [](std::size_t depth) {
    return std::string(depth, '[') + std::string(depth, ']');
  };
  CHECK(reading(nested(64)) == nested(64));
  CHECK(reading(nested(65)) == "y:1:65: error: this is nested more than 64 deep");
  CHECK(reading(nested(257)) == "y:1:257: error: more than 256 brackets open in a row");
  CHECK(reading(std::string(1 << 20, '[')) ==
        "y:1:257: error: more than 256 brackets open in a row");
  std::string dashes;
  for (int i = 0; i < 100'000; ++i) {
    dashes += "- ";
  }
  CHECK(reading(dashes) == "y:1:129: error: this is nested more than 64 deep");
}

TEST_CASE("signs that a parser would keep by the hundred thousand are counted first") {
  const auto repeated = [](std::string_view piece) {
    std::string text = "[";
    while (text.size() < (std::size_t{4} << 20U) - 16) {
      text += piece;
    }
    return text;
  };
  for (const std::string piece : {",", "[],", "[x", "a: b,", "&a b,"}) {
    CAPTURE(piece);
    CHECK(reading(repeated(piece)).ends_with("error: this file holds more than 200000 values"));
  }
}

TEST_CASE("files, values and texts beyond the limits are refused") {
  CHECK(reading(std::string((4U << 20U) + 1, 'a')) ==
        "y:1:1: error: the file is larger than 4 MiB");
  std::string items;
  for (int i = 0; i < 200'001; ++i) {
    items += "- a\n";
  }
  CHECK(reading(items) == "y:200001:3: error: this file holds more than 200000 values");
  CHECK(reading("a: " + std::string(65'536, 'x')).size() == 65'541);
  CHECK(reading("a: " + std::string(65'537, 'x')) ==
        "y:1:4: error: this text is longer than 64 KiB");
}

TEST_CASE("columns are counted in characters where a letter of two bytes stands before the fault") {
  CHECK(reading("é: b: c") == "y:1:5: error: a `:` stands where none is due");
  CHECK(reading("'größe': &x 1") == "y:1:10: error: an anchor is not part of this language");
}

TEST_CASE("raw bytes of the file reach no message") {
  const std::string said = reading("a: \"\\\xF0\x9F\x91\x9F\"");
  CHECK(said == "y:1:5: error: this backslash sequence is not known");
}

TEST_CASE("what is refused whole comes with what to do about it") {
  const auto hint = [](const std::string& text) {
    Sources sources;
    Diagnostics diagnostics;
    read_yaml(sources, sources.add("y", text), diagnostics);
    return diagnostics.by_place()[0].hint;
  };
  CHECK(hint("\xFF") == "save it as plain UTF-8 text, without that character");
  CHECK(hint(std::string((4U << 20U) + 1, 'a')) == "split it");
  CHECK(hint("a: " + std::string(65'537, 'x')) == "shorten it");
}

TEST_CASE("a file without content is refused") {
  for (const std::string text : {"", "\n\n", "# a remark", "---\n", "~"}) {
    CHECK(reading(text) == "y:1:1: error: the file holds nothing");
  }
}

TEST_CASE("all faults that leave the tree readable are shown in one run") {
  CHECK(fault_count("a: &x 1\nb: *x\nc: !t 2\na: 3\n<<: {}\n") == 5);
}

TEST_CASE("a text's place is its bytes, so that places inside it can be shown") {
  Sources sources;
  Diagnostics diagnostics;
  const auto source =
      sources.add("y", "a: plain text\nb: 'quoted'\nc: \"it\\x27s\"\nd: one\n  two\n");
  const auto tree = read_yaml(sources, source, diagnostics);
  REQUIRE(tree);
  CHECK(sources.text(tree->find("a")->where) == "plain text");
  CHECK(sources.text(tree->find("b")->where) == "quoted");
  CHECK(sources.text(tree->find("c")->where) == "\"it\\x27s\"");
  CHECK(sources.text(tree->find("d")->where) == "one");
}

TEST_CASE("a place where a value is missing is that of the sign before it") {
  Sources sources;
  Diagnostics diagnostics;
  const auto source = sources.add("y", "a:\nb: [x, , y]\nc:\n  - \n  - z\n");
  const auto tree = read_yaml(sources, source, diagnostics);
  REQUIRE(tree);
  CHECK(sources.text(tree->find("a")->where) == "a");
  CHECK(tree->find("b")->items[1].where.begin == 8);
  CHECK(sources.position(source, tree->find("c")->items[0].where.begin) == LinePosition{4, 3});
}

}  // namespace
}  // namespace heelrule
