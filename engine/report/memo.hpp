// Words that were made before, kept for the next time that they are needed.
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace heelrule {

/// Keeps the text that belongs to a number. Readings come in steps of a millimetre or a half, so
/// most of a long run asks for few texts again and again. A text may lose its place to another one
/// and is then made anew: what is kept never grows.
class Memo {
 public:
  /// The text of `key`, made by `make()` unless it is still there. The same number must always have
  /// the same text. The view holds until the next call.
  template <class Make>
  std::string_view get(double key, Make make) {
    if (kept_.empty()) {
      kept_.resize(places);
    }
    const auto bits = std::bit_cast<std::uint64_t>(key);
    Kept& kept = kept_[place(key)];
    if (!kept.is_made || kept.key != bits) {
      kept = {bits, make(), true};
    }
    return kept.text;
  }

 private:
  static constexpr unsigned place_bits = 8;
  static constexpr std::size_t places = std::size_t{1} << place_bits;
  static constexpr std::uint64_t spread = 0x9E3779B97F4A7C15;  // 2^64 over the golden ratio

  // Readings rise in equal steps, and multiples of the golden ratio spread such steps evenly
  // (Knuth, The Art of Computer Programming 3, section 6.4; from memory).
  static std::size_t place(double key) {
    const bool is_reading = key > -1e15 && key < 1e15;
    const std::uint64_t tenths =
        is_reading ? static_cast<std::uint64_t>(static_cast<std::int64_t>(key * 10))
                   : std::bit_cast<std::uint64_t>(key);
    return tenths * spread >> (64U - place_bits);
  }

  struct Kept {
    std::uint64_t key = 0;
    std::string text;
    bool is_made = false;
  };

  std::vector<Kept> kept_;
};

}  // namespace heelrule
