#include "cli/files.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <climits>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <system_error>

#include "cli/descriptor.hpp"
#include "cli/refusal.hpp"
#include "engine/reading/tree.hpp"

namespace heelrule {
namespace {

Problem cannot_read(const std::string& path, int reason) {
  return {fmt::format("cannot read `{}`: {}", path, std::strerror(reason)), ""};
}

Parsed<std::string> read_all(const std::string& path, int number) {
  std::string text;
  char buffer[65536];
  while (true) {
    const ssize_t got = ::read(number, buffer, sizeof buffer);
    if (got == 0) {
      return text;
    }
    if (got < 0) {
      if (errno == EINTR) {
        continue;
      }
      return cannot_read(path, errno);
    }
    text.append(buffer, static_cast<std::size_t>(got));
    if (text.size() > TreeLimits::bytes) {
      return Problem{fmt::format("`{}` is larger than {} MiB", path, TreeLimits::bytes >> 20U),
                     "split it"};
    }
  }
}

}  // namespace

Parsed<std::string> read_file(const std::string& path) {
  // Without O_NONBLOCK a named pipe would keep the command waiting for a writer.
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  if (file.number() < 0) {
    return cannot_read(path, errno);
  }
  struct stat status{};
  if (::fstat(file.number(), &status) != 0) {
    return cannot_read(path, errno);
  }
  if (S_ISDIR(status.st_mode)) {
    return Problem{fmt::format("`{}` is a folder", path), "name a file in it"};
  }
  if (!S_ISREG(status.st_mode)) {
    return is_no_file(path);
  }
  return read_all(path, file.number());
}

std::string folder_of(std::string_view path) {
  const std::size_t slash = path.rfind('/');
  return slash == std::string_view::npos
             ? "."
             : std::string(path.substr(0, std::max<std::size_t>(slash, 1)));
}

std::string real_path(const std::string& path) {
  char resolved[PATH_MAX];
  return ::realpath(path.c_str(), resolved) == nullptr ? std::string{} : std::string(resolved);
}

std::vector<std::string> file_names(const std::string& folder) {
  std::vector<std::string> names;
  std::error_code failed;
  for (const auto& entry : std::filesystem::directory_iterator(folder, failed)) {
    names.push_back(entry.path().filename().string());
  }
  std::sort(names.begin(), names.end());
  return names;
}

bool is_regular_file(const std::string& path) {
  struct stat status{};
  return ::stat(path.c_str(), &status) == 0 && S_ISREG(status.st_mode);
}

}  // namespace heelrule
