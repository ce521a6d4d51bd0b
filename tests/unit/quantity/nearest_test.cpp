#include "engine/quantity/nearest.hpp"

#include <catch2/catch.hpp>

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

TEST_CASE("the question names the candidate, and is empty without one") {
  Nearest none("colour");
  CHECK(none.question().empty());
  CHECK_FALSE(none.found());
  none.offer("color");
  CHECK(none.question() == "did you mean `color`?");
}

}  // namespace
}  // namespace heelrule
