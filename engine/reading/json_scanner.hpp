// JSON (RFC 8259) of texts, lists and maps, token by token, where nothing in it is escaped.
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <string_view>

namespace heelrule {

/// Walks over one line. Each function takes one token, with the blanks in front of it, and gives
/// false where something else stands there. Who takes tokens as the grammar of RFC 8259 allows them
/// has checked the line as a parser would have: the line `is_plainly_written`, so that a text runs
/// up to the next quotation mark, and blanks are the only white space. It stands here in whole
/// because every byte of a large batch goes through it.
class JsonScanner {
 public:
  /// Bytes that must be readable behind the line.
  static constexpr std::size_t padding = sizeof(std::uint64_t);

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
  bool text(std::string_view& words) {
    if (!take('"')) {
      return false;
    }
    const char* const begin = at_;
    at_ = quotation_mark(begin);
    if (at_ >= end_) {
      return false;
    }
    words = {begin, static_cast<std::size_t>(at_ - begin)};
    ++at_;
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
  // The next quotation mark, or something at or behind the end. Eight bytes at a time: a byte that
  // is zero is the lowest one whose highest bit is set here (Warren, Hacker's Delight, section 6-1;
  // from memory).
  const char* quotation_mark(const char* from) const {
    constexpr std::uint64_t each = 0x0101010101010101;
    for (; from < end_; from += sizeof(std::uint64_t)) {
      std::uint64_t word = 0;
      std::memcpy(&word, from, sizeof word);
      if constexpr (std::endian::native == std::endian::big) {
        word = __builtin_bswap64(word);
      }
      word ^= each * '"';
      const std::uint64_t found = (word - each) & ~word & (each * 0x80);
      if (found != 0) {
        return from + std::countr_zero(found) / 8;
      }
    }
    return from;
  }

  const char* at_;
  const char* end_;
};

/// Whether a line holds what every file may hold (see `first_offence`), and neither a control
/// character nor a backslash.
bool is_plainly_written(std::string_view line);

}  // namespace heelrule
