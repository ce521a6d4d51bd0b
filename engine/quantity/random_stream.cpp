#include "engine/quantity/random_stream.hpp"

namespace heelrule {
namespace {

constexpr int rounds = 10;

// The multipliers were searched for by the authors; the steps of the key are the golden ratio and
// √3 − 1 as fractions of 2^32.
constexpr std::uint64_t first_multiplier = 0xD2511F53;
constexpr std::uint64_t second_multiplier = 0xCD9E8D57;
constexpr RandomKey key_step{0x9E3779B9, 0xBB67AE85};

constexpr std::uint32_t high(std::uint64_t product) {
  return static_cast<std::uint32_t>(product >> 32U);
}
constexpr std::uint32_t low(std::uint64_t product) { return static_cast<std::uint32_t>(product); }

}  // namespace

RandomWords random_words(RandomCounter counter, RandomKey key) {
  for (int round = 0; round < rounds; ++round) {
    const std::uint64_t first = first_multiplier * counter[0];
    const std::uint64_t second = second_multiplier * counter[2];
    counter = {high(second) ^ counter[1] ^ key[0], low(second), high(first) ^ counter[3] ^ key[1],
               low(first)};
    key[0] += key_step[0];
    key[1] += key_step[1];
  }
  return counter;
}

}  // namespace heelrule
