// The journal of a record that is being made: a file beside it.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "cli/descriptor.hpp"
#include "engine/quantity/parsed.hpp"
#include "engine/recording/journal_line.hpp"

namespace heelrule {

/// An open journal. It belongs to this program alone until it is closed.
class Journal {
 public:
  /// Opens `PATH.journal`, made if it is not there, and takes half a last line off it. `problem`
  /// says why it cannot be used, and is empty if it can.
  explicit Journal(const std::string& path);

  const Problem& problem() const { return problem_; }

  /// Whether the problem is what stands in the file, and not the file.
  bool is_damaged() const { return damaged_; }

  /// What was kept before it was opened.
  const std::vector<JournalEntry>& entries() const { return entries_; }

  /// Keeps entries: when this returns without a problem, they are on the disk.
  Problem append(std::span<const JournalEntry> entries);

  /// Takes the file away.
  Problem remove();

  const std::string& name() const { return name_; }

 private:
  Problem cannot_keep(int reason) const;

  std::string name_;
  Descriptor file_;
  std::vector<JournalEntry> entries_;
  std::uint64_t next_ = 1;
  Problem problem_;
  bool damaged_ = false;
};

}  // namespace heelrule
