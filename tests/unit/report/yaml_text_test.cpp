#include "engine/report/yaml_text.hpp"

#include <catch2/catch.hpp>

#include "engine/reading/yaml_tree.hpp"

namespace heelrule {
namespace {

// What a reader of YAML makes of it.
std::string read_back(const std::string& value) {
  Sources sources;
  Diagnostics diagnostics;
  const auto tree =
      read_yaml(sources, sources.add("r", "key: " + yaml_text(value) + "\n"), diagnostics);
  REQUIRE(tree);
  return tree->entries.front().value.text;
}

}  // namespace

// YAML 1.2.2, sections 5.7 (escapes) and 7.3.1 (double quotes); `no`, `~` and `010` are the texts
// that its older readers take for something else (YAML 1.1, bool and int types).
TEST_CASE("a text in YAML is always quoted, and reads back the same") {
  for (const std::string value :
       {"no", "~", "010", "", "12\" boot", "back\\slash", "- a: b # c", " blanks ", "über 24,5 cm",
        "two\nlines", "a\ttab", "{value}", "a'b"}) {
    CAPTURE(value);
    CHECK(yaml_text(value).front() == '"');
    CHECK(yaml_text(value).find('\n') == std::string::npos);
    CHECK(read_back(value) == value);
  }
}

TEST_CASE("what cannot be seen is escaped, and what is no text is replaced") {
  CHECK(yaml_text("\x1b[2J") == "\"\\u001B[2J\"");
  CHECK(yaml_text("a\xE2\x80\xAE"
                  "b") == "\"a\\u202Eb\"");
  CHECK(yaml_text("\xff") == "\"\xEF\xBF\xBD\"");
}

}  // namespace heelrule
