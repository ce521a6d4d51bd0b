// Words that were made before, kept for the next time that they are needed.
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "engine/report/padded_text.hpp"
#include "engine/report/scattered.hpp"

namespace heelrule {

/// Keeps the text that belongs to a number. Readings come in steps of a millimetre or a half, so
/// most of a long run asks for few texts again and again. It has as many places as it needs so that
/// no text takes another's, up to a bound; from there on a text may lose its place, and is then
/// made anew.
class Memo {
 public:
  /// The text of `key`, made by `make()` unless it is still there. The same number must always have
  /// the same text. It holds until the next call.
  template <class Make>
  const PaddedText& get(double key, Make make) {
    const auto bits = std::bit_cast<std::uint64_t>(key);
    Kept& kept = kept_[place(bits)];
    if (!kept.is_made || kept.key != bits) {
      return keep(bits, make());
    }
    return kept.text;
  }

 private:
  static constexpr unsigned fewest_bits = 2;
  static constexpr unsigned most_bits = 10;

  struct Kept {
    std::uint64_t key = 0;
    PaddedText text;
    bool is_made = false;
  };

  std::size_t place(std::uint64_t key) const { return place_among(scattered(key), bits_); }

  const PaddedText& keep(std::uint64_t key, std::string text) {
    while (kept_[place(key)].is_made && bits_ < most_bits) {
      make_room();
    }
    Kept& kept = kept_[place(key)];
    kept = {key, PaddedText(std::move(text)), true};
    return kept.text;
  }

  void make_room() {
    std::vector<Kept> before(std::size_t{2} << bits_);
    before.swap(kept_);
    ++bits_;
    for (Kept& one : before) {
      if (one.is_made) {
        kept_[place(one.key)] = std::move(one);
      }
    }
  }

  unsigned bits_ = fewest_bits;
  std::vector<Kept> kept_ = std::vector<Kept>(std::size_t{1} << fewest_bits);
};

}  // namespace heelrule
