/* Loaded before the C library: makes the Nth call fail that writes to a regular file, settles one, renames or truncates
   one. FAIL_AT says which call, FAIL_WITH the errno. Counted from 1; 0 fails none. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <sys/types.h>
#include <unistd.h>

static int fails(void) {
  static int calls;
  const char *at = getenv("FAIL_AT");
  const char *with = getenv("FAIL_WITH");
  if (at == NULL || ++calls != atoi(at)) {
    return 0;
  }
  errno = with == NULL ? EIO : atoi(with);
  return 1;
}

static int is_file(int number) {
  struct stat status;
  return fstat(number, &status) == 0 && S_ISREG(status.st_mode);
}

ssize_t write(int number, const void *bytes, size_t count) {
  ssize_t (*real)(int, const void *, size_t) = dlsym(RTLD_NEXT, "write");
  if (!is_file(number) || !fails()) {
    return real(number, bytes, count);
  }
  /* A disk that fills up takes a part first. */
  if (count > 1) {
    real(number, bytes, count / 2);
    errno = getenv("FAIL_WITH") == NULL ? EIO : atoi(getenv("FAIL_WITH"));
  }
  return -1;
}

int fsync(int number) {
  int (*real)(int) = dlsym(RTLD_NEXT, "fsync");
  return fails() ? -1 : real(number);
}

int fdatasync(int number) {
  int (*real)(int) = dlsym(RTLD_NEXT, "fdatasync");
  return fails() ? -1 : real(number);
}

int ftruncate(int number, off_t length) {
  int (*real)(int, off_t) = dlsym(RTLD_NEXT, "ftruncate");
  return fails() ? -1 : real(number, length);
}

int rename(const char *from, const char *to) {
  int (*real)(const char *, const char *) = dlsym(RTLD_NEXT, "rename");
  return fails() ? -1 : real(from, to);
}

int renameat2(int from_folder, const char *from, int to_folder, const char *to, unsigned int flags) {
  int (*real)(int, const char *, int, const char *, unsigned int) = dlsym(RTLD_NEXT, "renameat2");
  return fails() ? -1 : real(from_folder, from, to_folder, to, flags);
}

int unlink(const char *path) {
  int (*real)(const char *) = dlsym(RTLD_NEXT, "unlink");
  return fails() ? -1 : real(path);
}
