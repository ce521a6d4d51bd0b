#include "engine/source/characters.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstring>
#include <utility>

namespace heelrule {
namespace {

unsigned byte_at(std::string_view text, std::size_t at) {
  return at < text.size() ? static_cast<unsigned char>(text[at]) : 0;
}

bool continues(unsigned byte) { return (byte & 0xC0U) == 0x80U; }

bool is_control(char32_t code) { return code < 0x20 || (code >= 0x7F && code <= 0x9F); }

bool is_bidirectional_control(char32_t code) {
  return (code >= 0x202A && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069) ||
         code == 0x061C || code == 0x200E || code == 0x200F;
}

constexpr std::size_t stride = 32;

// Whether `stride` bytes are all from 0x20 to 0x7E: in each eight of them no byte borrows when 0x20
// is taken away, and none reaches the highest bit when 1 is added.
bool are_printable_ascii(const char* bytes) {
  constexpr std::uint64_t each = 0x0101010101010101;
  std::array<std::uint64_t, stride / sizeof each> words{};
  std::memcpy(words.data(), bytes, stride);
  std::uint64_t high = 0;
  for (const std::uint64_t word : words) {
    high |= (word - each * 0x20) | (word + each) | word;
  }
  return (high & each * 0x80) == 0;
}

constexpr char32_t byte_order_mark = 0xFEFF;

// What is refused in a character and what follows it; empty if nothing is.
std::string offence_of(const Character& c, std::string_view text) {
  if (c.bytes == 0) {
    return fmt::format("a byte that is not UTF-8 (0x{:02x})", byte_at(text, 0));
  }
  if (c.code == 0) {
    return "a NUL byte";
  }
  if (c.code == '\r') {
    return byte_at(text, 1) == '\n' ? "" : "a carriage return without a line feed";
  }
  if (is_control(c.code) && c.code != '\t' && c.code != '\n') {
    return fmt::format("the control character U+{:04X}", static_cast<unsigned>(c.code));
  }
  if (is_bidirectional_control(c.code)) {
    return fmt::format("the text direction control U+{:04X}", static_cast<unsigned>(c.code));
  }
  return c.code == byte_order_mark ? "a byte order mark inside the text" : "";
}

}  // namespace

Character first_character(std::string_view text) {
  const unsigned lead = byte_at(text, 0);
  if (lead < 0x80) {
    return {lead, 1};
  }
  const std::size_t bytes = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  if (lead < 0xC2 || lead > 0xF4 || bytes > text.size()) {
    return {};
  }
  char32_t code = lead & (0x7FU >> bytes);
  for (std::size_t at = 1; at < bytes; ++at) {
    if (!continues(byte_at(text, at))) {
      return {};
    }
    code = (code << 6U) | (byte_at(text, at) & 0x3FU);
  }
  const bool overlong = (bytes == 3 && code < 0x800) || (bytes == 4 && code < 0x10000);
  const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
  if (overlong || surrogate || code > 0x10FFFF) {
    return {};
  }
  return {code, bytes};
}

std::size_t character_count(std::string_view text) {
  std::size_t count = 0;
  for (const char c : text) {
    count += continues(static_cast<unsigned char>(c)) ? 0 : 1;
  }
  return count;
}

std::optional<Offence> first_offence(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    if (at + stride <= text.size() && are_printable_ascii(text.data() + at)) {
      at += stride;
      continue;
    }
    if (text[at] >= 0x20 && text[at] < 0x7F) {
      ++at;
      continue;
    }
    const Character c = first_character(text.substr(at));
    std::string offence = offence_of(c, text.substr(at));
    if (!offence.empty()) {
      return Offence{at, std::max<std::size_t>(c.bytes, 1), std::move(offence)};
    }
    at += c.bytes;
  }
  return std::nullopt;
}

std::string shown_safely(std::string_view text) {
  std::string shown;
  shown.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const Character c = first_character(text.substr(at));
    if (c.bytes == 0 || (is_control(c.code) && c.code < 0x100)) {
      fmt::format_to(std::back_inserter(shown), "\\x{:02x}",
                     c.bytes == 0 ? byte_at(text, at) : static_cast<unsigned>(c.code));
    } else if (is_bidirectional_control(c.code) || c.code == byte_order_mark || c.code == 0x2028 ||
               c.code == 0x2029) {
      fmt::format_to(std::back_inserter(shown), "\\u{:04x}", static_cast<unsigned>(c.code));
    } else {
      shown += text.substr(at, c.bytes);
    }
    at += c.bytes == 0 ? 1 : c.bytes;
  }
  return shown;
}

}  // namespace heelrule
