// Loaded before the C library: makes the Nth call fail that writes to a regular file, settles,
// renames, cuts or takes away one. FAIL_AT says which call, counted from 1; FAIL_WITH the errno.
#include <dlfcn.h>
#include <sys/stat.h>
#include <sys/types.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>

namespace {

int number_in(const char* name, int otherwise) {
  const char* text = std::getenv(name);
  return text == nullptr ? otherwise : std::atoi(text);
}

bool fails() {
  static int calls = 0;
  if (++calls != number_in("FAIL_AT", 0)) {
    return false;
  }
  errno = number_in("FAIL_WITH", EIO);
  return true;
}

bool is_file(int number) {
  struct stat status{};
  return ::fstat(number, &status) == 0 && S_ISREG(status.st_mode);
}

template <class Function>
Function* real(const char* name, Function*) {
  return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, name));
}

}  // namespace

extern "C" {

ssize_t write(int number, const void* bytes, size_t count) {
  auto* go_on = real("write", &write);
  if (!is_file(number) || !fails()) {
    return go_on(number, bytes, count);
  }
  // A disk that fills up takes a part first.
  const int reason = errno;
  if (count > 1) {
    [[maybe_unused]] const ssize_t part = go_on(number, bytes, count / 2);
  }
  errno = reason;
  return -1;
}

int fsync(int number) { return fails() ? -1 : real("fsync", &fsync)(number); }

int fdatasync(int number) { return fails() ? -1 : real("fdatasync", &fdatasync)(number); }

int ftruncate(int number, off_t length) noexcept {
  return fails() ? -1 : real("ftruncate", &ftruncate)(number, length);
}

int rename(const char* from, const char* to) noexcept {
  return fails() ? -1 : real("rename", &rename)(from, to);
}

int link(const char* from, const char* to) noexcept {
  return fails() ? -1 : real("link", &link)(from, to);
}

int fchmod(int number, mode_t mode) noexcept {
  return fails() ? -1 : real("fchmod", &fchmod)(number, mode);
}

int unlink(const char* path) noexcept { return fails() ? -1 : real("unlink", &unlink)(path); }

}  // extern "C"
