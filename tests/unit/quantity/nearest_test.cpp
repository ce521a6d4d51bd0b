#include "engine/quantity/nearest.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>

#include "tests/laws/dice.hpp"

namespace heelrule {
namespace {

std::string nearest(std::string_view written, std::initializer_list<std::string_view> candidates) {
  Nearest nearest(written);
  for (const std::string_view candidate : candidates) {
    nearest.offer(candidate);
  }
  return nearest.name();
}

TEST_CASE("a letter added, left out, changed or swapped is one edit") {
  CHECK(nearest("heel_counterr", {"heel_counter"}) == "heel_counter");
  CHECK(nearest("cottn", {"cotton"}) == "cotton");
  CHECK(nearest("catton", {"cotton"}) == "cotton");
  CHECK(nearest("ctoton", {"cotton"}) == "cotton");
}

TEST_CASE("the nearest candidate wins, then one with the same first letter, then the first") {
  CHECK(nearest("inssole_length", {"insole_width", "insole_length"}) == "insole_length");
  CHECK(nearest("fat", {"flat", "fast"}) == "flat");
  CHECK(nearest("im", {"mm", "cm", "in"}) == "in");
}

TEST_CASE("what is far off is not guessed") {
  CHECK(nearest("abc", {"xyz", "abxyz"}).empty());
  CHECK(nearest("foot_length_standing", {"outsole_flexibility"}).empty());
}

TEST_CASE("a single letter is not taken for another one") {
  CHECK(nearest("x", {"m", "g", "%"}).empty());
  CHECK(nearest("k", {"kg"}) == "kg");
  CHECK(nearest("m", {"m"}) == "m");
}

TEST_CASE("empty and very long names have no neighbours") {
  CHECK(nearest("", {"m"}).empty());
  CHECK(nearest("m", {""}).empty());
  const std::string longest(64, 'a');
  const std::string too_long(65, 'a');
  CHECK(nearest(longest, {longest}) == longest);
  CHECK(nearest(too_long, {too_long}).empty());
}

// The distance as it is defined, letter by letter from the end.
std::size_t edits(std::string_view a, std::string_view b) {
  if (a.empty() || b.empty()) {
    return a.size() + b.size();
  }
  const std::string_view shorter_a = a.substr(0, a.size() - 1);
  const std::string_view shorter_b = b.substr(0, b.size() - 1);
  std::size_t least = std::min(edits(shorter_a, b), edits(a, shorter_b)) + 1;
  least = std::min(least, edits(shorter_a, shorter_b) + (a.back() == b.back() ? 0 : 1));
  if (a.size() > 1 && b.size() > 1 && a.back() == shorter_b.back() &&
      b.back() == shorter_a.back()) {
    least = std::min(least, edits(a.substr(0, a.size() - 2), b.substr(0, b.size() - 2)) + 1);
  }
  return least;
}

TEST_CASE("of two words the nearness is that of their distance") {
  Dice dice(17);
  int near = 0;
  for (int i = 0; i < 1'500; ++i) {
    const auto letter = [&] { return "abcA\x81\xC1"[dice.below(6)]; };
    std::string words[2];
    for (std::string& word : words) {
      word.resize(1 + dice.below(6));
      std::generate(word.begin(), word.end(), letter);
    }
    if (dice.one_in(2)) {
      words[1] = words[0];
      words[1][dice.below(words[1].size())] = letter();
      words[1].insert(dice.below(words[1].size()), dice.below(3), letter());
    }
    const std::size_t distance = edits(words[0], words[1]);
    const bool expected = distance <= std::clamp<std::size_t>(words[0].size() / 3, 1, 3) &&
                          distance < std::max(words[0].size(), words[1].size());
    CHECK(nearest(words[0], {words[1]}).empty() != expected);
    near += expected ? 1 : 0;
  }
  CHECK(near > 100);
}

TEST_CASE("the question names the candidate, and is empty without one") {
  Nearest none("colour");
  CHECK(none.question().empty());
  CHECK_FALSE(none.found());
  none.offer("color");
  CHECK(none.question() == "did you mean `color`?");
}

}  // namespace
}  // namespace heelrule
