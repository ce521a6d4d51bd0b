// Text that is put together from many small pieces.
#pragma once

#include <array>
#include <cstddef>
#include <cstring>
#include <string>
#include <string_view>
#include <vector>

#include "engine/report/json_writer.hpp"
#include "engine/report/padded_text.hpp"
#include "engine/report/plain_json.hpp"

namespace heelrule {

/// Text that grows at its end, and is made anew again and again in the same memory. It is here
/// because a verdict's line is made of dozens of pieces of a few bytes each: to copy them by calls
/// takes longer than to decide what they say.
class GrowingText {
 public:
  void clear() { size_ = 0; }

  std::string_view text() const { return {bytes_.data(), size_}; }
  std::size_t size() const { return size_; }

  /// Appends `piece`, which must not be a part of this text.
  void put(std::string_view piece) {
    copy(piece.data(), piece.size(), place_for(piece.size()));
    size_ += piece.size();
  }

  /// The same of words that stand in the program: how many is known, and the copy without a branch.
  template <std::size_t size>
  void put(const char (&words)[size]) {
    std::memcpy(place_for(size - 1), words, size - 1);
    size_ += size - 1;
  }

  void put(PaddedView piece) {
    char* const to = place_for(piece.size + PaddedText::step);
    for (std::size_t at = 0; at < piece.size; at += PaddedText::step) {
      std::memcpy(to + at, piece.data + at, PaddedText::step);
    }
    size_ += piece.size;
  }
  void put(const PaddedText& piece) { put(piece.view()); }

  /// Takes the last byte away. Precondition: there is one.
  void drop_last() { --size_; }

  /// Appends `text` as a JSON string, quotes included.
  void put_json(std::string_view text) {
    if (!is_plain_json(text)) {
      put(json_text(text));
      return;
    }
    char* const to = place_for(text.size() + 2);
    to[0] = '"';
    copy(text.data(), text.size(), to + 1);
    to[text.size() + 1] = '"';
    size_ += text.size() + 2;
  }

 private:
  char* place_for(std::size_t more) {
    const std::size_t needed = size_ + more;
    if (bytes_.size() < needed) {
      bytes_.resize(needed + needed / 4);  // and not twice: it stays as large for a whole run
    }
    return bytes_.data() + size_;
  }

  // Two copies of a length that is known, which may overlap, are two instructions each.
  template <std::size_t length>
  static void copy_ends(const char* from, std::size_t size, char* to) {
    std::array<char, length> first{};
    std::array<char, length> last{};
    const std::size_t second = size - length;
    std::memcpy(first.data(), from, length);
    std::memcpy(last.data(), from + second, length);
    std::memcpy(to, first.data(), length);
    std::memcpy(to + second, last.data(), length);
  }

  static void copy(const char* from, std::size_t size, char* to) {
    if (size > 32) {
      std::memcpy(to, from, size);
    } else if (size > 16) {
      copy_ends<16>(from, size, to);
    } else if (size > 8) {
      copy_ends<8>(from, size, to);
    } else if (size >= 4) {
      copy_ends<4>(from, size, to);
    } else {
      for (std::size_t i = 0; i < size; ++i) {
        to[i] = from[i];
      }
    }
  }

  std::vector<char> bytes_ = std::vector<char>(4096);
  std::size_t size_ = 0;
};

}  // namespace heelrule
