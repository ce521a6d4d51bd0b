#include "cli/journal.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <utility>

#include "cli/files.hpp"
#include "cli/locked_file.hpp"

namespace heelrule {

Journal::Journal(const std::string& path) : name_(path + ".journal") {
  LockedFile opened = open_locked(name_);
  if (opened.busy) {
    problem_ = {fmt::format("somebody else is recording into `{}`", path),
                "wait until they have done, or give another name"};
    return;
  }
  if (!opened.file.is_open()) {
    problem_ = std::move(opened.problem);
    return;
  }
  file_ = std::move(opened.file);
  const auto text = read_file(name_);
  const auto read = text ? read_journal(*text) : Parsed<JournalText>(text.problem());
  if (!read) {
    problem_ = read.problem();
    damaged_ = true;
    return;
  }
  // The name of the file must last before what stands in it is relied on.
  if (::ftruncate(file_.number(), static_cast<off_t>(read->whole_bytes)) != 0) {
    problem_ = cannot_keep(errno);
  } else if (const int reason = settle_folder_of(name_); reason != 0) {
    problem_ = cannot_keep(reason);
  }
  entries_ = read->entries;
  next_ = entries_.size() + 1;
}

Problem Journal::cannot_keep(int reason) const {
  return {fmt::format("cannot write `{}`: {}", name_, std::strerror(reason)),
          "what was answered before is kept there; make room, and start the same command again"};
}

Problem Journal::append(std::span<const JournalEntry> entries) {
  std::string lines;
  for (const JournalEntry& entry : entries) {
    lines += journal_line(next_++, entry);
  }
  // A failure to reach the disk is not tried again: what the disk holds is then not known.
  if (const int reason = write_all(file_.number(), lines); reason != 0) {
    return cannot_keep(reason);
  }
  return ::fdatasync(file_.number()) == 0 ? Problem{} : cannot_keep(errno);
}

Problem Journal::remove() {
  if (::unlink(name_.c_str()) != 0) {
    return {fmt::format("cannot take `{}` away: {}", name_, std::strerror(errno)), "delete it"};
  }
  settle_folder_of(name_);
  return {};
}

}  // namespace heelrule
