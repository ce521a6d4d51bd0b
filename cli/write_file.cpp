#include "cli/write_file.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>

#include "cli/descriptor.hpp"
#include "cli/files.hpp"
#include "cli/locked_file.hpp"
#include "cli/refusal.hpp"

namespace heelrule {
namespace {

constexpr mode_t owner_alone = 0600;

Problem is_there(const std::string& path) {
  return {fmt::format("`{}` is there already", path), "write `--replace` to write over it"};
}

// A file that has no name of its own yet, and goes away unless it gets one.
class Unnamed {
 public:
  explicit Unnamed(const std::string& path) : name_(folder_of(path) + "/.heelrule-XXXXXX") {
    number_ = ::mkostemp(name_.data(), O_CLOEXEC);
  }
  ~Unnamed() {
    if (number_ >= 0) {
      ::close(number_);
      ::unlink(name_.c_str());
    }
  }
  Unnamed(const Unnamed&) = delete;
  Unnamed& operator=(const Unnamed&) = delete;
  Unnamed(Unnamed&&) = delete;
  Unnamed& operator=(Unnamed&&) = delete;

  bool is_open() const { return number_ >= 0; }

  // Each of these is 0, or the reason why it failed. A failed fsync is not tried again: what was
  // not written is gone from memory by then.
  int write(std::string_view text) const {
    if (const int reason = write_all(number_, text); reason != 0) {
      return reason;
    }
    return ::fsync(number_) == 0 ? 0 : errno;
  }

  int permit_as(const std::string& path) const {
    struct stat status{};
    const mode_t mode = ::stat(path.c_str(), &status) == 0 ? status.st_mode & 0777U : owner_alone;
    return ::fchmod(number_, mode) == 0 ? 0 : errno;
  }

  // `link` is the one call that never replaces.
  int name_as(const std::string& path, Existing existing) const {
    const int done = existing == Existing::replace ? std::rename(name_.c_str(), path.c_str())
                                                   : ::link(name_.c_str(), path.c_str());
    return done == 0 ? 0 : errno;
  }

 private:
  std::string name_;
  int number_ = -1;
};

}  // namespace

Problem write_file(const std::string& path, std::string_view text, Existing existing) {
  const Unnamed file(path);
  if (!file.is_open()) {
    return cannot_write(path, errno);
  }
  int reason = file.permit_as(path);
  reason = reason != 0 ? reason : file.write(text);
  reason = reason != 0 ? reason : file.name_as(path, existing);
  if (reason == EEXIST) {
    return is_there(path);
  }
  if (reason != 0) {
    return cannot_write(path, reason);
  }
  reason = settle_folder_of(path);
  return reason == 0 ? Problem{} : cannot_write(path, reason);
}

Problem refuse_target(const std::string& path, Existing existing) {
  struct stat status{};
  if (::lstat(path.c_str(), &status) != 0) {
    return errno == ENOENT ? Problem{} : cannot_write(path, errno);
  }
  if (S_ISLNK(status.st_mode)) {
    return is_a_link(path);
  }
  if (!S_ISREG(status.st_mode)) {
    return is_no_file(path);
  }
  return existing == Existing::keep ? is_there(path) : Problem{};
}

Problem make_folder(const std::string& path) {
  constexpr mode_t owner_looks = 0700;
  const int reason = ::mkdir(path.c_str(), owner_looks) == 0 ? 0 : errno;
  if (reason == 0 || is_folder(path)) {
    return {};
  }
  return {fmt::format("cannot make the folder `{}`: {}", path, std::strerror(reason)), ""};
}

bool is_folder(const std::string& path) {
  struct stat status{};
  return ::stat(path.c_str(), &status) == 0 && S_ISDIR(status.st_mode);
}

}  // namespace heelrule
