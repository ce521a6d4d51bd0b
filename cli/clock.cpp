#include "cli/clock.hpp"

#include <array>
#include <ctime>

namespace heelrule {
namespace {

std::string written(const std::tm& time, const char* form) {
  std::array<char, 64> text{};
  return {text.data(), std::strftime(text.data(), text.size(), form, &time)};
}

}  // namespace

std::string today() {
  const std::time_t seconds = std::time(nullptr);
  std::tm here{};
  ::localtime_r(&seconds, &here);
  return written(here, "%Y-%m-%d");
}

std::string now() {
  const std::time_t seconds = std::time(nullptr);
  std::tm universal{};
  ::gmtime_r(&seconds, &universal);
  return written(universal, "%Y-%m-%dT%H:%MZ");
}

}  // namespace heelrule
