// Which text stands in JSON as it is.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "engine/reading/eight_bytes.hpp"

namespace heelrule {

/// Whether a byte is of a character that JSON text has as it is, in all that we write: ASCII, no
/// control character, no quotation mark, no reverse solidus, no `<`.
constexpr bool is_plain_json(char byte) {
  return byte >= 0x20 && byte < 0x7F && byte != '"' && byte != '\\' && byte != '<';
}

/// The same of eight bytes at once.
inline bool are_plain_json(std::uint64_t bytes) {
  // A byte below 0x80 less a smaller one, or plus so much that it stays below 0x100, keeps to its
  // own place; so the highest bit of each place tells of its byte.
  const auto each = [](unsigned char byte) { return 0x0101010101010101U * byte; };
  const auto any = [&](unsigned char byte) {
    const std::uint64_t difference = bytes ^ each(byte);
    return (difference - each(1)) & ~difference;
  };
  const std::uint64_t below = (bytes - each(0x20)) & ~bytes;
  const std::uint64_t above = bytes | (bytes + each(1));
  return ((below | above | any('"') | any('\\') | any('<')) & each(0x80)) == 0;
}

/// Whether a text stands between quotes as it is.
inline bool is_plain_json(std::string_view text) {
  constexpr std::size_t step = sizeof(std::uint64_t);
  if (text.size() < step) {
    return std::all_of(text.begin(), text.end(), [](char byte) { return is_plain_json(byte); });
  }
  for (std::size_t at = 0; at + step < text.size(); at += step) {
    if (!are_plain_json(eight_bytes(text.data() + at))) {
      return false;
    }
  }
  // The end, together with some that was seen before: whole eights are the quickest.
  return are_plain_json(eight_bytes(text.data() + text.size() - step));
}

}  // namespace heelrule
