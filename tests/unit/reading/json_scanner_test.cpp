#include "engine/reading/json_scanner.hpp"

#include <array>
#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

// A text with room behind it, in which a quotation mark would be found by mistake.
struct Padded {
  explicit Padded(const std::string& text)
      : memory(text + std::string(JsonScanner::padding, '"')), line(memory.data(), text.size()) {}

  std::string memory;
  std::string_view line;
};

TEST_CASE("a text ends at the next quotation mark, however long it is") {
  for (std::size_t length = 0; length < 70; ++length) {
    const std::string words(length, 'x');
    const Padded text("\"" + words + "\":");
    JsonScanner scanner(text.line);
    std::string_view found;
    REQUIRE(scanner.key(found));
    CHECK(found == words);
    CHECK(scanner.at_end());
  }
}

TEST_CASE("a text without its quotation mark is none, whatever stands behind the line") {
  for (std::size_t length = 0; length < 70; ++length) {
    const Padded text("\"" + std::string(length, 'x'));
    JsonScanner scanner(text.line);
    std::string_view found;
    CHECK_FALSE(scanner.text(found));
  }
}

TEST_CASE("bytes are taken where all of them come next") {
  for (std::size_t length = 1; length < 40; ++length) {
    const std::string bytes =
        std::string("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMN").substr(0, length);
    const Padded text(bytes + ",");
    JsonScanner whole(text.line);
    CHECK(whole.take_bytes(bytes));
    CHECK(whole.take(','));
    for (std::size_t at = 0; at < length; ++at) {
      std::string other = bytes;
      other[at] = '?';
      JsonScanner scanner(text.line);
      CHECK_FALSE(scanner.take_bytes(other));
      CHECK(scanner.sees('a'));
    }
    const Padded cut(bytes.substr(0, length - 1));
    CHECK_FALSE(JsonScanner(cut.line).take_bytes(bytes.substr(0, length - 1) + "\""));
  }
}

TEST_CASE("a line is plainly written where no byte of it is anything else, wherever it stands") {
  const std::vector<std::string> sound{"~", "é", "µ", "\xE2\x82\xAC", "\xF0\x9F\x91\x9F", "éµé"};
  const std::vector<std::string> offending{"\x01",         "\t",           "\x1F",
                                           "\x7F",         "\\",           std::string(1, '\0'),
                                           "\x80",         "\xC3",         "\xC3\x28",
                                           "\xC0\xAF",     "\xE2\x80",     "\xFF",
                                           "\xED\xA0\x80", "\xE2\x80\xAE", "\xF4\x90\x80\x80"};
  for (const std::size_t length : std::array<std::size_t, 7>{10, 63, 64, 65, 128, 150, 200}) {
    const std::string line(length, 'x');
    CHECK(is_plainly_written(line));
    for (std::size_t at = 0; at <= length; ++at) {
      for (const std::string& words : sound) {
        CHECK(is_plainly_written(std::string(line).insert(at, words)));
      }
      for (const std::string& words : offending) {
        CHECK_FALSE(is_plainly_written(std::string(line).insert(at, words)));
        CHECK_FALSE(
            is_plainly_written(std::string(line).insert(length / 2, "é").insert(at, words)));
      }
    }
  }
}

}  // namespace
}  // namespace heelrule
