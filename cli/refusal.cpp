#include "cli/refusal.hpp"

#include <fmt/format.h>

#include <cstring>

namespace heelrule {

Problem cannot_write(const std::string& path, int reason) {
  return {fmt::format("cannot write `{}`: {}", path, std::strerror(reason)), ""};
}

Problem is_a_link(const std::string& path) {
  return {fmt::format("`{}` is a link", path), "name the file itself"};
}

Problem is_no_file(const std::string& path) {
  return {fmt::format("`{}` is no regular file", path), "name a file"};
}

}  // namespace heelrule
