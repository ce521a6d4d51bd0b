// JSON (RFC 8259) of texts, lists and maps, token by token, where nothing in it is escaped.
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "engine/reading/eight_bytes.hpp"

namespace heelrule {

/// Walks over one line. Each function takes one token, with the blanks in front of it, and gives
/// false where something else stands there. Who takes tokens as the grammar of RFC 8259 allows them
/// has checked the line as a parser would have: the line `is_plainly_written`, so that a text runs
/// up to the next quotation mark, and blanks are the only white space. It stands here in whole
/// because every byte of a large batch goes through it.
class JsonScanner {
 public:
  /// Bytes that must be readable behind the line.
  static constexpr std::size_t padding = 2 * sizeof(std::uint64_t);

  /// Precondition: `is_plainly_written(line)`.
  explicit JsonScanner(std::string_view line) : at_(line.data()), end_(line.data() + line.size()) {}

  /// Takes a brace, a bracket, a colon or a comma.
  bool take(char token) {
    const bool is_there = sees(token);
    at_ += is_there ? 1 : 0;
    return is_there;
  }

  /// Whether such a token comes next.
  bool sees(char token) {
    while (at_ < end_ && *at_ == ' ') {
      ++at_;
    }
    return at_ < end_ && *at_ == token;
  }

  /// Takes a text.
  bool text(std::string_view& words) { return take('"') && rest_of_text(words); }

  /// Takes a text whose quotation mark was taken.
  bool rest_of_text(std::string_view& words) {
    const char* const begin = at_;
    at_ = quotation_mark(begin);
    if (at_ >= end_) {
      return false;
    }
    words = {begin, static_cast<std::size_t>(at_ - begin)};
    ++at_;
    return true;
  }

  /// Takes these very bytes, if they come next without a blank in front; none of them is a line
  /// break.
  bool take_bytes(std::string_view bytes) {
    if (bytes.size() > static_cast<std::size_t>(end_ - at_) || !is_next(bytes)) {
      return false;
    }
    at_ += bytes.size();
    return true;
  }

  /// Takes the key of a field and its colon.
  bool key(std::string_view& name) { return text(name) && take(':'); }

  /// Takes what goes on after an item or field: a comma (`more` is true then), or `closing`.
  bool after_item(char closing, bool& more) {
    more = take(',');
    return more || take(closing);
  }

  /// Whether nothing but blanks is left.
  bool at_end() { return !sees('\0') && at_ == end_; }

 private:
  // Eight bytes at a time, the last eight perhaps once more: a few steps, where a call of `memcmp`
  // would take as long as all of them.
  bool is_next(std::string_view bytes) const {
    if (bytes.size() < sizeof(std::uint64_t)) {
      return std::string_view(at_, bytes.size()) == bytes;
    }
    const auto same = [&](std::size_t from) {
      return eight_bytes(at_ + from) == eight_bytes(bytes.data() + from);
    };
    const std::size_t last = bytes.size() - sizeof(std::uint64_t);
    for (std::size_t from = 0; from < last; from += sizeof(std::uint64_t)) {
      if (!same(from)) {
        return false;
      }
    }
    return same(last);
  }

  // The next quotation mark, or something at or behind the end. The first sixteen bytes are looked
  // at without a branch: texts of records are about as often longer than eight as they are not, and
  // a processor that guesses wrong loses more time than both looks take.
  const char* quotation_mark(const char* from) const {
    const std::uint64_t first = marks(from);
    const std::uint64_t second = marks(from + step);
    const char* const place = first != 0 ? from : from + step;
    const std::uint64_t found = first != 0 ? first : second;
    return found != 0 ? place + std::countr_zero(found) / 8 : far_quotation_mark(from + 2 * step);
  }

  const char* far_quotation_mark(const char* from) const {
    for (; from < end_; from += step) {
      if (const std::uint64_t found = marks(from)) {
        return from + std::countr_zero(found) / 8;
      }
    }
    return from;
  }

  // Bits in each of eight bytes that is a quotation mark, of which the lowest can be trusted: a
  // byte that is zero is the lowest one whose highest bit is set here (Warren, Hacker's Delight,
  // section 6-1; from memory).
  static std::uint64_t marks(const char* from) {
    constexpr std::uint64_t each = 0x0101010101010101;
    std::uint64_t word = eight_bytes(from);
    if constexpr (std::endian::native == std::endian::big) {
      word = __builtin_bswap64(word);
    }
    word ^= each * '"';
    return (word - each) & ~word & (each * 0x80);
  }

  static constexpr std::size_t step = sizeof(std::uint64_t);

  const char* at_;
  const char* end_;
};

/// Whether a line holds what every file may hold (see `first_offence`), and neither a control
/// character nor a backslash.
bool is_plainly_written(std::string_view line);

}  // namespace heelrule
