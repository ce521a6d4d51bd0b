#include "engine/quantity/random_stream.hpp"

#include <catch2/catch.hpp>

namespace heelrule {
namespace {

// The known answers that the authors give with their library Random123, version 1.14 (Debian's
// librandom123-dev, tests/kat_vectors, lines `philox4x32 10`).
TEST_CASE("the words are those that the authors of the generator published") {
  CHECK(random_words({0, 0, 0, 0}, {0, 0}) ==
        RandomWords{0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8});
  CHECK(random_words({0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff}, {0xffffffff, 0xffffffff}) ==
        RandomWords{0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd});
  CHECK(random_words({0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344}, {0xa4093822, 0x299f31d0}) ==
        RandomWords{0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1});
}

TEST_CASE("a fraction is never 0 and never 1") {
  CHECK(open_fraction(0) > 0);
  CHECK(open_fraction(0xffffffff) < 1);
  CHECK(open_fraction(0x80000000) - 0.5 == 0.5 / 4294967296.0);
}

}  // namespace
}  // namespace heelrule
