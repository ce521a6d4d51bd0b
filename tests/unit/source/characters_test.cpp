#include "engine/source/characters.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

using namespace std::string_view_literals;

std::string what_offends(std::string_view text) {
  const auto offence = first_offence(text);
  return offence ? offence->what : "nothing";
}

TEST_CASE("a code point has one encoding, and no other is UTF-8") {
  CHECK(first_character("A").code == U'A');
  CHECK(first_character("é").code == U'é');
  CHECK(first_character("€").bytes == 3);
  CHECK(first_character("\U0001F45F").code == U'\U0001F45F');
  // RFC 3629, section 3: overlong forms, surrogates and what lies above U+10FFFF are invalid.
  for (const std::string_view text :
       {"\xC0\xAF"sv, "\xE0\x80\xAF"sv, "\xF0\x80\x80\xAF"sv, "\xED\xA0\x80"sv, "\xED\xBF\xBF"sv,
        "\xF4\x90\x80\x80"sv, "\xF5\x80\x80\x80"sv, "\x80"sv, "\xFF"sv, "\xFE"sv}) {
    CAPTURE(std::string(text));
    CHECK(first_character(text).bytes == 0);
  }
}

TEST_CASE("a sequence that is cut off is not UTF-8") {
  for (const std::string_view text : {"\xC3"sv, "\xE2\x82"sv, "\xF0\x9F\x91"sv, "\xE2\x41\xAC"sv}) {
    CHECK(first_character(text).bytes == 0);
  }
}

TEST_CASE("characters are counted, not bytes") {
  CHECK(character_count("") == 0);
  CHECK(character_count("heel") == 4);
  CHECK(character_count("größe €") == 7);
}

TEST_CASE("plain text with tabs, line feeds and carriage returns before them may stand") {
  CHECK_FALSE(first_offence("Fußlänge:\t243 mm\r\nnext line\n"));
}

TEST_CASE("each thing that no file may hold is named with its place") {
  CHECK(what_offends("ab\xFF") == "a byte that is not UTF-8 (0xff)");
  CHECK(first_offence("ab\xFF")->offset == 2);
  CHECK(what_offends("a\0b"sv) == "a NUL byte");
  CHECK(what_offends("a\x1B[2J") == "the control character U+001B");
  CHECK(what_offends("a\x7F") == "the control character U+007F");
  CHECK(what_offends("a\xC2\x85") == "the control character U+0085");
  CHECK(what_offends("a\rb") == "a carriage return without a line feed");
  CHECK(what_offends("a\r") == "a carriage return without a line feed");
  CHECK(what_offends("a\xEF\xBB\xBF") == "a byte order mark inside the text");
  CHECK(what_offends("\xEF\xBB\xBF") == "a byte order mark inside the text");
}

// Unicode Standard Annex #9, section 2: the explicit directional formatting characters.
TEST_CASE("every control that turns the direction of text is refused") {
  for (const std::string_view control :
       {"\u061C", "\u200E", "\u200F", "\u202A", "\u202B", "\u202C", "\u202D", "\u202E", "\u2066",
        "\u2067", "\u2068", "\u2069"}) {
    const std::string text = "a" + std::string(control) + "b";
    CHECK(what_offends(text).starts_with("the text direction control U+"));
  }
  CHECK(what_offends("a\u202Eb") == "the text direction control U+202E");
}

TEST_CASE("UTF-16 is no UTF-8, with a byte order mark or without") {
  CHECK(what_offends("\xFF\xFEt\0"sv) == "a byte that is not UTF-8 (0xff)");
  CHECK(what_offends("\xFE\xFF\0t"sv) == "a byte that is not UTF-8 (0xfe)");
  CHECK(what_offends("t\0i\0"sv) == "a NUL byte");
}

TEST_CASE("what could harm a terminal is shown in letters") {
  CHECK(shown_safely("Fußlänge €") == "Fußlänge €");
  CHECK(shown_safely("\x1B[2J") == "\\x1b[2J");
  CHECK(shown_safely("a\nb\tc") == "a\\x0ab\\x09c");
  CHECK(shown_safely("a\xFFz") == "a\\xffz");
  CHECK(shown_safely("\u202E") == "\\u202e");
  CHECK(shown_safely("\u2028") == "\\u2028");
  CHECK(shown_safely("\u0085") == "\\x85");
  CHECK(shown_safely("\0"sv) == "\\x00");
}

}  // namespace
}  // namespace heelrule
