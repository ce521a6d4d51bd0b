#include "engine/reading/json_scanner.hpp"

#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

bool is_ascii(char c) { return static_cast<unsigned char>(c) < 0x80; }

std::size_t next_beyond_ascii(std::string_view line, std::size_t at) {
  constexpr std::uint64_t high_bits = 0x8080808080808080;
  std::uint64_t word = 0;
  for (; at + sizeof word <= line.size(); at += sizeof word) {
    std::memcpy(&word, line.data() + at, sizeof word);
    if ((word & high_bits) != 0) {
      break;
    }
  }
  while (at < line.size() && is_ascii(line[at])) {
    ++at;
  }
  return at;
}

// Each character beyond ASCII is made of bytes beyond ASCII alone, so they can be looked at without
// their neighbours.
bool is_sound_beyond_ascii(std::string_view line) {
  for (std::size_t at = next_beyond_ascii(line, 0); at < line.size();
       at = next_beyond_ascii(line, at)) {
    const std::size_t begin = at;
    while (at < line.size() && !is_ascii(line[at])) {
      ++at;
    }
    if (first_offence(line.substr(begin, at - begin))) {
      return false;
    }
  }
  return true;
}

}  // namespace

bool is_plainly_written(std::string_view line) {
  // Nothing in this loop depends on a byte, so that it becomes vector instructions.
  unsigned char bad = 0;
  unsigned char all = 0;
  for (const char c : line) {
    const auto byte = static_cast<unsigned char>(c);
    bad |= static_cast<unsigned char>((byte < 0x20 ? 1 : 0) | (byte == 0x7F ? 1 : 0) |
                                      (byte == '\\' ? 1 : 0));
    all |= byte;
  }
  return bad == 0 && (all < 0x80 || is_sound_beyond_ascii(line));
}

}  // namespace heelrule
