// Numbers of short texts, kept for the next time that the text is read.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "engine/reading/eight_bytes.hpp"

namespace heelrule {

/// Keeps what the texts of one trait mean. Measures come in steps of a millimetre or a half and
/// levels are few, so most of a large batch says the same few texts again and again. A text may
/// lose its place to another one and is then read anew: what is kept never grows.
class KnownNumbers {
 public:
  /// Bytes that must be readable from the start of a text, however short it is.
  static constexpr std::size_t longest = 16;

  /// Sets `number` to the number of `text`, read by `read()` (an optional number) unless it is
  /// still there. False where there is none; that is not kept. The same text must always have the
  /// same number. It holds no zero byte.
  template <class Read>
  bool find(std::string_view text, double& number, Read read) {
    if (text.empty() || text.size() > longest) {
      const std::optional<double> value = read();
      number = value.value_or(number);
      return value.has_value();
    }
    if (kept_.empty()) {
      kept_.resize(places);
    }
    const std::uint64_t front = eight_bytes(&text.front()) & mask(text.size(), 0);
    const std::uint64_t back = eight_bytes(&text.front() + word) & mask(text.size(), word);
    Kept& kept = kept_[place(front, back)];
    if (kept.front != front || kept.back != back) {
      const std::optional<double> value = read();
      if (!value) {
        return false;
      }
      kept = {front, back, *value};
    }
    number = kept.number;
    return true;
  }

 private:
  static constexpr std::size_t word = sizeof(std::uint64_t);
  static constexpr unsigned place_bits = 8;
  static constexpr std::size_t places = std::size_t{1} << place_bits;

  // A text filled up with zero bytes; none of one byte or more is all zeros.
  struct Kept {
    std::uint64_t front = 0;
    std::uint64_t back = 0;
    double number = 0;
  };

  // Ones for each of eight bytes from `from` that belongs to a text of `size` bytes. Read from a
  // table, for a processor cannot guess the lengths of texts, and a wrong guess is dear.
  static std::uint64_t mask(std::size_t size, std::size_t from) {
    static constexpr std::array<char, 2 * longest> ones_then_zeros = [] {
      std::array<char, 2 * longest> bytes{};
      std::fill_n(bytes.begin(), longest, static_cast<char>(0xFF));
      return bytes;
    }();
    return eight_bytes(ones_then_zeros.data() + (longest - size + from));
  }

  // Odd multipliers carry every byte into the upper bits (Knuth, The Art of Computer Programming 3,
  // section 6.4; from memory).
  static std::size_t place(std::uint64_t front, std::uint64_t back) {
    const std::uint64_t mixed = front * 0x9E3779B97F4A7C15 ^ back * 0xC2B2AE3D27D4EB4F;
    return static_cast<std::size_t>(mixed >> (64U - place_bits));
  }

  std::vector<Kept> kept_;
};

}  // namespace heelrule
