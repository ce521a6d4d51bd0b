#include "engine/reading/json_tree.hpp"

#include <simdjson.h>

#include <catch2/catch.hpp>

#include "engine/reading/json_fault.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

using namespace std::string_literals;

struct Reading {
  Sources sources;
  Diagnostics diagnostics;
  std::optional<Node> tree;
};

Reading read(const std::string& text) {
  Reading reading;
  const auto source = reading.sources.add("j", text);
  reading.tree = read_json(reading.sources, source, reading.diagnostics);
  CHECK(reading.tree.has_value() != reading.diagnostics.has_errors());
  return reading;
}

std::string fault(const std::string& text) {
  const Reading reading = read(text);
  const std::string said = show(reading.diagnostics, reading.sources);
  return said.substr(0, said.find('\n'));
}

TEST_CASE("JSON is read as a tree of texts, lists and maps, each with its place") {
  const Reading reading = read(R"({"a": ["x", {"b": "é"}], "c": null, "d": true, "e": -0.50})");
  REQUIRE(reading.tree);
  const auto text_at = [&](const Node& node) { return reading.sources.text(node.where); };
  const Node& list = *reading.tree->find("a");
  REQUIRE(list.items.size() == 2);
  CHECK(text_at(list.items[0]) == "x");
  CHECK(text_at(*list.items[1].find("b")) == "é");
  CHECK(reading.tree->find("c")->kind == Node::Kind::nothing);
  CHECK(text_at(*reading.tree->find("c")) == "c");
  CHECK(reading.tree->find("d")->text == "true");
  CHECK(reading.tree->find("e")->text == "-0.50");
  CHECK(text_at(*reading.tree->find("e")) == "-0.50");
}

TEST_CASE("a number is kept as it is written") {
  const Reading reading = read(R"([0.1, 1e3, 100000000000000000, 12.0, -0])");
  REQUIRE(reading.tree);
  CHECK(reading.tree->items[1].text == "1e3");
  CHECK(reading.tree->items[2].text == "100000000000000000");
  CHECK(reading.tree->items[3].text == "12.0");
  CHECK(reading.tree->items[4].text == "-0");
}

TEST_CASE("a key that comes twice in JSON is an error that shows both places") {
  const Reading reading = read(R"({"a": 1, "b": {}, "\u0061": 2})");
  CHECK(show(reading.diagnostics, reading.sources) ==
        "j:1:20: error: the key `a` comes a second time\n"
        "    1 | {\"a\": 1, \"b\": {}, \"\\u0061\": 2}\n"
        "      |                    ^~~~~~\n"
        "j:1:3: note: the first one is here\n"
        "    1 | {\"a\": 1, \"b\": {}, \"\\u0061\": 2}\n"
        "      |   ^\n"
        "hint: keep one of the two\n");
}

TEST_CASE("an escape in JSON cannot bring in what a file may not hold") {
  CHECK(fault(R"(["\u0000"])") == "j:1:3: error: this text holds a NUL byte");
  CHECK(fault(R"(["a\u001b"])") == "j:1:3: error: this text holds the control character U+001B");
  CHECK(fault(R"({"\u202e": 1})") ==
        "j:1:3: error: this text holds the text direction control U+202E");
  CHECK(read(R"(["\ud83d\ude00"])").tree->items[0].text == "😀");
  CHECK(read(R"(["a\tb\n\"\\\/"])").tree->items[0].text == "a\tb\n\"\\/");
}

// Whether a parser that others wrote takes a text.
bool others_take(const std::string& text) {
  simdjson::dom::parser parser;
  return parser.parse(text).error() == simdjson::SUCCESS;
}

TEST_CASE("what is JSON and what is not is as simdjson has it, whatever single sign is changed") {
  const std::string sound =
      R"({"a": [-0.5e+2, 10, "x\u00e9\ud83d\ude00\n"], "b": {"c": null, "d": true}, "e": []})";
  REQUIRE(others_take(sound));
  const auto agree = [](const std::string& text) {
    INFO(text);
    CHECK(!json_fault(text, 0).has_value() == others_take(text));
  };
  for (std::size_t at = 0; at < sound.size(); ++at) {
    for (const char sign : std::string_view("{}[],:\"\\ /07e.+-un\t\n")) {
      std::string changed = sound;
      changed[at] = sign;
      agree(changed);
      agree(sound.substr(0, at) + sign + sound.substr(at));
    }
    agree(sound.substr(0, at));
    agree(sound.substr(0, at) + sound.substr(at + 1));
  }
}

TEST_CASE("texts in JSON read as simdjson reads them") {
  const std::string list = R"(["\u0041\u00df\u0939\ud83d\uDE00", "\u0020\"\\\/", "\t\n", "é漢😀"])";
  simdjson::dom::parser parser;
  const simdjson::dom::array theirs = parser.parse(list);
  const Reading ours = read(list);
  REQUIRE(ours.tree);
  for (std::size_t i = 0; i < theirs.size(); ++i) {
    CHECK(ours.tree->items[i].text == std::string_view(theirs.at(i)));
  }
}

TEST_CASE("all faults that leave a JSON tree readable are shown in one run") {
  CHECK(read(R"({"a": "\u0000", "a": {"b": 1, "b": "\u0007"}})").diagnostics.error_count() == 4);
}

TEST_CASE("nesting beyond the limit is refused, also where no parser would go") {
  const auto nested = [](std::size_t depth) {
    return std::string(depth, '[') + "1" + std::string(depth, ']');
  };
  CHECK(fault(nested(64)).empty());
  CHECK(fault(nested(65)) == "j:1:65: error: this is nested more than 64 deep");
  CHECK(fault(nested(5000)) == "j:1:65: error: this is nested more than 64 deep");
  CHECK(fault(std::string(1 << 20, '[')) == "j:1:65: error: this is nested more than 64 deep");
}

TEST_CASE("files, values and texts beyond the limits are refused in JSON too") {
  std::string many = "[1";
  for (int i = 0; i < 200'000; ++i) {
    many += ",1";
  }
  CHECK(fault(many + "]").ends_with("error: this file holds more than 200000 values"));
  CHECK(fault("[\"" + std::string(65'537, 'x') + "\"]") ==
        "j:1:3: error: this text is longer than 64 KiB");
  CHECK(fault(std::string((4U << 20U) + 1, ' ')) == "j:1:1: error: the file is larger than 4 MiB");
}

TEST_CASE("bytes that are no plain text are refused in JSON too") {
  CHECK(fault("[\"a\0\"]"s) == "j:1:4: error: the file holds a NUL byte");
  CHECK(fault("[\"\xC3\"]") == "j:1:3: error: the file holds a byte that is not UTF-8 (0xc3)");
  CHECK(fault("\xEF\xBB\xBF[]") ==
        "j:1:1: error: the file holds a byte order mark inside the text");
}

// RFC 8259: what none of its rules allows, and where it stands.
TEST_CASE("a fault of syntax is said at its place") {
  const std::pair<const char*, const char*> faults[] = {
      {"", "1:1: error: the file ends where a value is due"},
      {"  \n", "1:1: error: the file ends where a value is due"},
      {"[1,]", "1:4: error: a value is due here"},
      {"[1 2]", "1:4: error: `,` or `]` is due here"},
      {"[,1]", "1:2: error: a value or `]` is due here"},
      {"[1", "1:3: error: the file ends where `,` or `]` is due"},
      {"[1}", "1:3: error: `,` or `]` is due here"},
      {"]", "1:1: error: a value is due here"},
      {"{\"a\": 1,}", "1:9: error: a key in quotes is due here"},
      {"{a: 1}", "1:2: error: a key in quotes or `}` is due here"},
      {"{'a': 1}", "1:2: error: a key in quotes or `}` is due here"},
      {"{\"a\" 1}", "1:6: error: `:` is due here"},
      {"{\"a\"}", "1:5: error: `:` is due here"},
      {"{\"a\":}", "1:6: error: a value is due here"},
      {"{\"a\": 1 \"b\": 2}", "1:9: error: `,` or `}` is due here"},
      {"{\"a\": 243 mm}", "1:11: error: `,` or `}` is due here"},
      {"{\"é\": 243 mm}", "1:11: error: `,` or `}` is due here"},
      {"{} {}", "1:4: error: the end of the file is due here"},
      {"{}\n}", "2:1: error: the end of the file is due here"},
      {"[\"a]\n", "1:2: error: this quote is not closed on its line"},
      {"[\"a\tb\"]", "1:4: error: a tab stands in this text"},
      {"[\"\\q\"]", "1:3: error: this backslash sequence is not known"},
      {"[\"\\u12\"]", "1:3: error: this backslash sequence is not known"},
      {"[\"\\ud800\"]", "1:3: error: this backslash sequence is not known"},
      {"[\"\\udc00\"]", "1:3: error: this backslash sequence is not known"},
      {"[\"\\ud800\\u0041\"]", "1:3: error: this backslash sequence is not known"},
      {"[tru]", "1:2: error: `tru` is no value of JSON"},
      {"[NaN]", "1:2: error: `NaN` is no value of JSON"},
      {"[01]", "1:2: error: `01` is no value of JSON"},
      {"[+1]", "1:2: error: `+1` is no value of JSON"},
      {"[.5]", "1:2: error: `.5` is no value of JSON"},
      {"[5.]", "1:2: error: `5.` is no value of JSON"},
      {"[1e]", "1:2: error: `1e` is no value of JSON"},
      {"[-]", "1:2: error: `-` is no value of JSON"},
      {"[1e999]", "1:2: error: `1e999` is too large for a number"},
      {"[123456789012345678901]", "1:2: error: `123456789012345678901` is too large for a number"},
      {"[1] // remark", "1:5: error: the end of the file is due here"},
  };
  for (const auto& [text, said] : faults) {
    CAPTURE(text);
    CHECK(fault(text) == "j:"s + said);
  }
}

}  // namespace
}  // namespace heelrule
