#include "engine/report/growing_text.hpp"

#include <catch2/catch.hpp>
#include <string>

namespace heelrule {
namespace {

std::string some_text(std::size_t length) {
  std::string text;
  for (std::size_t i = 0; i < length; ++i) {
    text += static_cast<char>('a' + (i * 7 + length) % 26);
  }
  return text;
}

TEST_CASE("pieces of any length stand one behind the other") {
  GrowingText text;
  std::string expected;
  for (std::size_t length = 0; length < 300; ++length) {
    text.put(some_text(length));
    expected += some_text(length);
    REQUIRE(text.text() == expected);
    REQUIRE(text.size() == expected.size());
  }
  text.clear();
  CHECK(text.text().empty());
  text.put("again");
  CHECK(text.text() == "again");
}

TEST_CASE("words that are padded, and words of the program, stand there as any other") {
  GrowingText text;
  std::string expected;
  for (std::size_t length = 0; length < 200; ++length) {
    text.put(PaddedText(some_text(length)));
    text.put("},");
    expected += some_text(length) + "},";
    REQUIRE(text.text() == expected);
  }
  text.drop_last();
  expected.pop_back();
  CHECK(text.text() == expected);
}

TEST_CASE("a piece longer than all that was there before has room") {
  GrowingText text;
  text.put("a");
  text.put(std::string(100'000, 'b'));
  CHECK(text.text() == "a" + std::string(100'000, 'b'));
}

TEST_CASE("JSON texts are those of the writer of JSON") {
  GrowingText text;
  std::string expected;
  for (const std::string piece : {"", "S-07", "2026-10-03", "white <trainer>", "größer", "a\"b",
                                  "a much longer name of a shoe that stands in the shop", "\t"}) {
    text.put_json(piece);
    expected += json_text(piece);
  }
  CHECK(text.text() == expected);
}

}  // namespace
}  // namespace heelrule
