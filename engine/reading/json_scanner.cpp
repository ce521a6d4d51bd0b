#include "engine/reading/json_scanner.hpp"

#include <algorithm>
#include <optional>

#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::size_t stretch = 64;  // bytes; a multiple of what a vector register holds

bool is_ascii(char c) { return static_cast<unsigned char>(c) < 0x80; }

// What is known of all bytes of a stretch together.
struct Bytes {
  bool are_plain = true;
  bool are_ascii = true;
};

// Nothing in this loop depends on a byte, so that it becomes vector instructions.
Bytes look_at(const char* from, std::size_t count) {
  unsigned char bad = 0;
  unsigned char all = 0;
  for (std::size_t i = 0; i < count; ++i) {
    const auto byte = static_cast<unsigned char>(from[i]);
    bad |= static_cast<unsigned char>((byte < 0x20 ? 1 : 0) | (byte == 0x7F ? 1 : 0) |
                                      (byte == '\\' ? 1 : 0));
    all |= byte;
  }
  return {bad == 0, all < 0x80};
}

std::size_t next_beyond_ascii(std::string_view line, std::size_t at) {
  constexpr std::uint64_t high_bits = 0x8080808080808080;
  constexpr std::size_t step = sizeof high_bits;
  while (at + step <= line.size() && (eight_bytes(line.data() + at) & high_bits) == 0) {
    at += step;
  }
  while (at < line.size() && is_ascii(line[at])) {
    ++at;
  }
  return at;
}

// Looks at the characters beyond ASCII that begin from `at` up to `end`, and gives the place behind
// the last one, or nothing where one is not sound. Each is made of bytes beyond ASCII alone, so
// they can be looked at without their neighbours.
std::optional<std::size_t> pass_beyond_ascii(std::string_view line, std::size_t at,
                                             std::size_t end) {
  for (at = next_beyond_ascii(line.substr(0, end), at); at < end;
       at = next_beyond_ascii(line.substr(0, end), at)) {
    const std::size_t begin = at;
    while (at < line.size() && !is_ascii(line[at])) {
      ++at;
    }
    if (first_offence(line.substr(begin, at - begin))) {
      return std::nullopt;
    }
  }
  return at;
}

// Looks at a stretch; characters beyond ASCII before `passed` were looked at with an earlier one.
bool pass(std::string_view line, std::size_t begin, std::size_t count, std::size_t& passed) {
  const Bytes bytes = look_at(line.data() + begin, count);
  if (bytes.are_ascii || !bytes.are_plain) {
    return bytes.are_plain;
  }
  const auto behind = pass_beyond_ascii(line, std::max(begin, passed), begin + count);
  passed = behind.value_or(passed);
  return behind.has_value();
}

}  // namespace

bool is_plainly_written(std::string_view line) {
  std::size_t passed = 0;
  if (line.size() < stretch) {
    return pass(line, 0, line.size(), passed);
  }
  for (std::size_t begin = 0; begin + stretch <= line.size(); begin += stretch) {
    if (!pass(line, begin, stretch, passed)) {
      return false;
    }
  }
  // The end, together with some that was seen before: whole stretches are the quickest.
  return pass(line, line.size() - stretch, stretch, passed);
}

}  // namespace heelrule
