#include "cli/descriptor.hpp"

#include <unistd.h>

#include <cerrno>

namespace heelrule {

Descriptor::~Descriptor() {
  if (number_ >= 0) {
    ::close(number_);
  }
}

Descriptor& Descriptor::operator=(Descriptor&& other) noexcept {
  std::swap(number_, other.number_);
  return *this;
}

int write_all(int number, std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = ::write(number, text.data(), text.size());
    if (written < 0) {
      if (errno == EINTR) {
        continue;
      }
      return errno;
    }
    text.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

}  // namespace heelrule
