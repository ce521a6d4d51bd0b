#include "cli/locked_file.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <utility>

#include "cli/files.hpp"
#include "cli/refusal.hpp"

namespace heelrule {
namespace {

constexpr mode_t owner_alone = 0600;

Problem cannot_open(const std::string& path, int reason) {
  return reason == ELOOP ? is_a_link(path) : cannot_write(path, reason);
}

// Whether the open file is still the one that has this name: whoever had it before may have put it
// in its place, or taken it away.
bool has_name(int number, const std::string& path) {
  struct stat open{};
  struct stat named{};
  return ::fstat(number, &open) == 0 && ::lstat(path.c_str(), &named) == 0 &&
         open.st_dev == named.st_dev && open.st_ino == named.st_ino;
}

}  // namespace

LockedFile open_locked(const std::string& path) {
  while (true) {
    Descriptor file(::open(path.c_str(),
                           O_RDWR | O_CREAT | O_APPEND | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK,
                           owner_alone));
    if (!file.is_open()) {
      return {Descriptor(), false, cannot_open(path, errno)};
    }
    struct stat status{};
    if (::fstat(file.number(), &status) != 0) {
      return {Descriptor(), false, cannot_open(path, errno)};
    }
    if (!S_ISREG(status.st_mode)) {
      return {Descriptor(), false, is_no_file(path)};
    }
    if (::flock(file.number(), LOCK_EX | LOCK_NB) != 0) {
      return {Descriptor(), errno == EWOULDBLOCK, cannot_open(path, errno)};
    }
    if (has_name(file.number(), path)) {
      return {std::move(file), false, {}};
    }
  }
}

int settle_folder_of(const std::string& path) {
  const Descriptor open(::open(folder_of(path).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (!open.is_open()) {
    return errno;
  }
  // Some file systems cannot do this for a folder, and need not.
  return ::fsync(open.number()) == 0 || errno == EINVAL ? 0 : errno;
}

}  // namespace heelrule
