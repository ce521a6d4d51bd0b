#include "engine/reading/read_text.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

// BCP 47 (RFC 5646), appendix A: tags of its own list of examples.
TEST_CASE("language tags of the standard's examples are taken as tags") {
  for (const std::string_view tag :
       {"de", "fr", "ja", "zh-Hant", "sr-Latn", "zh-cmn-Hans-CN", "sl-rozaj-biske", "de-DE",
        "es-419", "de-CH-1901", "hy-Latn-IT-arevela", "en-a-myext"}) {
    CAPTURE(std::string(tag));
    CHECK(is_language_tag(tag));
  }
}

TEST_CASE("what has not the shape of a tag is none") {
  for (const std::string_view tag : {"", "e", "en_US", "en-", "-en", "en--US", "english", "1a",
                                     "value", "en-toolongpart", "én"}) {
    CAPTURE(std::string(tag));
    CHECK_FALSE(is_language_tag(tag));
  }
}

TEST_CASE("a text is one wording, or one for each language") {
  Diagnostics diagnostics;
  Node plain;
  plain.kind = Node::Kind::text;
  plain.text = "Keep the pair.\n";
  CHECK(read_text(plain, "means", diagnostics).in({}) == "Keep the pair.");
  Node map;
  map.kind = Node::Kind::map;
  map.entries = {{{"en", {}}, plain}, {{"es", {}}, plain}};
  map.entries[1].value.text = "Conserve el par.";
  const Text text = read_text(map, "means", diagnostics);
  const std::vector<std::string> spanish{"pt", "es"};
  CHECK(text.in(spanish) == "Conserve el par.");
  CHECK(diagnostics.empty());
}

}  // namespace
}  // namespace heelrule
