// Numbers in digits, kept for the next time that they are needed.
#pragma once

#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/quantity/decimal.hpp"
#include "engine/report/scattered.hpp"

namespace heelrule {

/// Writes numbers as `shortest` does. A long run meets some thousand scores, each of which has up
/// to seventeen digits that take longer to find than to look up.
class Numerals {
 public:
  /// Says that a number will soon be asked for: its digits may lie far away in memory.
  void expect(double number) const { __builtin_prefetch(&kept_[place_of(number)]); }

  /// The digits of a number. They hold until the next call.
  std::string_view of(double number) {
    const auto bits = std::bit_cast<std::uint64_t>(number);
    Kept& kept = kept_[place_of(number)];
    if (kept.bits != bits || kept.length == 0) {
      return keep(number, bits, kept);
    }
    return {kept.digits.data(), kept.length};
  }

 private:
  static constexpr unsigned place_bits = 13;

  struct Kept {
    std::uint64_t bits = 0;
    std::array<char, 23> digits{};
    std::uint8_t length = 0;  // 0: none is kept
  };

  static std::size_t place_of(double number) {
    return place_among(scattered(std::bit_cast<std::uint64_t>(number)), place_bits);
  }

  std::string_view keep(double number, std::uint64_t bits, Kept& kept) {
    digits_.clear();
    append_shortest(digits_, number);
    if (digits_.size() <= kept.digits.size()) {
      kept.bits = bits;
      kept.length = static_cast<std::uint8_t>(digits_.copy(kept.digits.data(), digits_.size()));
    }
    return digits_;
  }

  std::vector<Kept> kept_ = std::vector<Kept>(std::size_t{1} << place_bits);
  std::string digits_;
};

}  // namespace heelrule
