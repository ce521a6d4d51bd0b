#include "engine/recording/journal_line.hpp"

#include <fmt/format.h>

#include <boost/crc.hpp>
#include <optional>

#include "engine/reading/json_tree.hpp"
#include "engine/report/json_writer.hpp"

namespace heelrule {
namespace {

// A line is taken as it stands or not at all, so it is compared with what would have been written.
std::optional<JournalEntry> read_line(std::string_view line, std::uint64_t number) {
  Sources sources;
  Diagnostics diagnostics;
  const auto tree = read_json(sources, sources.add("journal", std::string(line)), diagnostics);
  if (!tree) {
    return std::nullopt;
  }
  JournalEntry entry{text_at(*tree, "key"), text_at(*tree, "typed")};
  return journal_line(number, entry) == line ? std::optional(std::move(entry)) : std::nullopt;
}

}  // namespace

std::string journal_line(std::uint64_t number, const JournalEntry& entry) {
  JsonWriter json(JsonWriter::Layout::compact);
  json.begin_object();
  json.number("seq", static_cast<double>(number));
  json.text("key", entry.key)
      .text("typed", entry.typed)
      .text("sum", checksum(fmt::format("{}\n{}\n{}", number, entry.key, entry.typed)));
  json.end_object();
  return json.take() + "\n";
}

std::string checksum(std::string_view text) {
  boost::crc_32_type sum;
  sum.process_bytes(text.data(), text.size());
  return fmt::format("{:08x}", sum.checksum());
}

Parsed<JournalText> read_journal(std::string_view text) {
  JournalText journal;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    const std::size_t bytes = end == std::string_view::npos ? text.size() : end + 1;
    auto entry = read_line(text.substr(0, bytes), journal.entries.size() + 1);
    if (!entry && bytes < text.size()) {
      return Problem{fmt::format("line {} of the journal is not as it was written",
                                 journal.entries.size() + 1),
                     "keep a copy, take that line and all below it out, and start again"};
    }
    if (!entry) {
      break;
    }
    journal.entries.push_back(std::move(*entry));
    journal.whole_bytes += bytes;
    text.remove_prefix(bytes);
  }
  return journal;
}

}  // namespace heelrule
