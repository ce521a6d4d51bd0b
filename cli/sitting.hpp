// One sitting at the bench: from the first question to the written file, or to where it is broken
// off.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "cli/command_line.hpp"
#include "cli/exit_status.hpp"
#include "cli/interruption.hpp"
#include "cli/journal.hpp"
#include "cli/prompted_lines.hpp"
#include "cli/write_file.hpp"
#include "engine/reading/tree.hpp"
#include "engine/recording/dialogue.hpp"

namespace heelrule {

/// A record that is to be amended, as it was found.
struct FoundRecord {
  std::string text;
  Node tree;
};

/// Asks, keeps each answer in the journal, and writes the record in the end. Whatever breaks it
/// off, the next sitting with the same command goes on from the journal.
class Sitting {
 public:
  /// `command` and `program` must outlive this object. Precondition: `read_inspection` finds
  /// nothing wrong with `found`.
  Sitting(const RecordCommand& command, const Program& program, std::optional<FoundRecord> found);

  ExitStatus run();

 private:
  using Refused = std::optional<ExitStatus>;  // already told of

  ExitStatus sit();
  Refused begin();
  Refused begin_anew();
  Refused go_on();
  Problem replay(const JournalEntry& kept);
  void take_note(const JournalEntry& kept);
  Refused keep(std::span<const JournalEntry> entries);
  static Refused say(std::string_view words);
  Refused ask_who(PromptedLines& lines);
  Refused ask_one(PromptedLines& lines);
  void greet(bool at_terminal) const;
  ExitStatus break_off(PromptedLine::Kind kind);
  ExitStatus finish();
  ExitStatus write(const std::string& text);
  ExitStatus put_away(const std::string& words);
  std::optional<std::string> record_text() const;
  std::string rules_words() const;
  Existing existing() const;

  const RecordCommand& command_;
  const Program& program_;
  std::optional<FoundRecord> found_;
  Interruption interruption_;
  Draft draft_;
  Journal journal_;
  Dialogue dialogue_;
  Amender amender_;
  std::size_t lines_read_ = 0;
  bool may_replace_ = false;
  bool is_resumed_ = false;
  bool is_done_ = false;  // `finish` was typed
  bool is_interrupted_ = false;
};

}  // namespace heelrule
