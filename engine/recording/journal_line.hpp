// The lines of a journal, in which each answer stands before the next question is asked.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// One line: a place of the record, and what was typed for it.
struct JournalEntry {
  std::string key;    ///< `foot_length.left` (see `key_of`), or one of `journal_keys`
  std::string typed;  ///< `243 mm # twice`

  bool operator==(const JournalEntry&) const = default;
};

/// A line of JSON with a number and a checksum (CRC-32 of ISO 3309, over number, key and text), and
/// a line feed:
///
///     {"seq":3,"key":"foot_length.left","typed":"243 mm","sum":"8d0c1c2b"}
std::string journal_line(std::uint64_t number, const JournalEntry& entry);

/// CRC-32 in hexadecimal: `checksum("123456789")` is `cbf43926`.
std::string checksum(std::string_view text);

/// What could be read of a journal.
struct JournalText {
  std::vector<JournalEntry> entries;
  std::size_t whole_bytes = 0;  ///< how much of the text they take; what follows is torn
};

/// Reads a journal. A last line that is cut short or does not fit its checksum was being written
/// when the power failed: it is left out. A line before it that does not fit is a fault, since
/// something else has been at the file.
Parsed<JournalText> read_journal(std::string_view text);

}  // namespace heelrule
