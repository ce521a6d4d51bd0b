#include "cli/progress.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <cmath>

#include "cli/output.hpp"

namespace heelrule {
namespace {

constexpr std::chrono::milliseconds pause{500};
constexpr std::string_view wipe_line = "\r\x1b[K";

}  // namespace

Progress::Progress(std::optional<std::uint64_t> bytes_in_all)
    : is_watched_(::isatty(STDERR_FILENO) == 1),
      bytes_in_all_(bytes_in_all),
      begun_(Clock::now()),
      shown_(begun_) {}

void Progress::add(std::uint64_t lines, std::uint64_t bytes) {
  lines_ += lines;
  bytes_ += bytes;
  if (!is_watched_) {
    return;
  }
  const Clock::time_point now = Clock::now();
  if (now - shown_ >= pause) {
    shown_ = now;
    is_shown_ = true;
    write_error(fmt::format("{}{}", wipe_line, words(now)));
  }
}

void Progress::wipe() {
  if (is_shown_) {
    write_error(wipe_line);
    is_shown_ = false;
  }
}

std::string Progress::words(Clock::time_point now) const {
  const double seconds = std::chrono::duration<double>(now - begun_).count();
  std::string words =
      fmt::format("{} records, {:.0f} a second", lines_, static_cast<double>(lines_) / seconds);
  if (bytes_in_all_ && bytes_ > 0 && *bytes_in_all_ >= bytes_) {
    const auto done = static_cast<double>(bytes_);
    const double left = static_cast<double>(*bytes_in_all_) - done;
    words += fmt::format(", {} left", duration_words(seconds * left / done));
  }
  return words;
}

std::string duration_words(double seconds) {
  const auto whole = static_cast<std::uint64_t>(std::llround(seconds));
  if (whole < 60) {
    return fmt::format("{} s", whole);
  }
  return whole < 3600 ? fmt::format("{} min {} s", whole / 60, whole % 60)
                      : fmt::format("{} h {} min", whole / 3600, whole % 3600 / 60);
}

}  // namespace heelrule
