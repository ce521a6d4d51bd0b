#include "engine/reading/known_numbers.hpp"

#include <catch2/catch.hpp>
#include <string>

#include "tests/laws/dice.hpp"

namespace heelrule {
namespace {

// Room behind a text, which says something else each time.
std::string padded(const std::string& text, char filling) {
  return text + std::string(KnownNumbers::longest, filling);
}

TEST_CASE("a text has the number that reading it gives, known or not, whatever stands behind it") {
  Dice dice(11);
  KnownNumbers known;
  for (int i = 0; i < 20'000; ++i) {
    std::string text(1 + dice.below(20), 'a');
    for (char& c : text) {
      c = static_cast<char>('a' + dice.below(2));
    }
    const auto expected = static_cast<double>(std::hash<std::string>()(text) % 100'000);
    const std::string memory = padded(text, dice.one_in(2) ? '"' : 'a');
    double number = -1;
    REQUIRE(known.find(std::string_view(memory).substr(0, text.size()), number,
                       [&] { return std::optional(expected); }));
    REQUIRE(number == expected);
  }
}

TEST_CASE("a short text is read once, and a long one each time") {
  for (const std::string text :
       {"7", "23.5 mm", "hook and loop", "sixteen of bytes", "seventeen of them"}) {
    KnownNumbers known;
    const std::string memory = padded(text, ' ');
    int reads = 0;
    double number = 0;
    for (int i = 0; i < 3; ++i) {
      CHECK(known.find(std::string_view(memory).substr(0, text.size()), number, [&] {
        ++reads;
        return std::optional(4.0);
      }));
    }
    CHECK(number == 4);
    CHECK(reads == (text.size() <= KnownNumbers::longest ? 1 : 3));
  }
}

TEST_CASE("that a text has no number is not kept, and leaves the place as it was") {
  KnownNumbers known;
  const std::string memory = padded("5 in", '"');
  const auto text = std::string_view(memory).substr(0, 4);
  double number = 9;
  CHECK_FALSE(known.find(text, number, [] { return std::optional<double>(); }));
  CHECK(number == 9);
  CHECK(known.find(text, number, [] { return std::optional(127.0); }));
  CHECK(number == 127);
  CHECK_FALSE(known.find("", number, [] { return std::optional<double>(); }));
}

}  // namespace
}  // namespace heelrule
