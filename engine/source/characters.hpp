// UTF-8: what may pass the door, and how it is shown.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace heelrule {

/// One code point of a text and the bytes that it takes.
struct Character {
  char32_t code = 0;
  std::size_t bytes = 0;  ///< 0 where the text is not valid UTF-8
};

/// The code point at the start of `text` (RFC 3629: no overlong forms, no surrogates, at most
/// U+10FFFF). Precondition: `text` is not empty.
Character first_character(std::string_view text);

/// How many code points a valid UTF-8 text has; a byte that is not part of any counts as one.
std::size_t character_count(std::string_view text);

/// A byte sequence that no file of ours may hold.
struct Offence {
  std::size_t offset = 0;
  std::size_t bytes = 1;
  std::string what;  ///< `a NUL byte`, `the control character U+0007`, …
};

/// The first thing in `text` that is refused: bytes that are not UTF-8, NUL and other control
/// characters (tab, line feed, and carriage return before a line feed may stand), a byte order mark
/// (one at the start is taken off before, see reading/text_gate.hpp), and the bidirectional
/// controls that make text read otherwise than it is (UAX 9; CVE-2021-42574).
std::optional<Offence> first_offence(std::string_view text);

/// `text` fit for a terminal, a log or a message: control characters, bidirectional controls and
/// bytes that are not UTF-8 appear as `\x1b` or `\u202e`, and everything else as it is. Never
/// longer than needed: one line stays one line.
std::string shown_safely(std::string_view text);

}  // namespace heelrule
