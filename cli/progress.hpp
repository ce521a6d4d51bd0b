// How far a long run has come, for somebody who watches.
#pragma once

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>

namespace heelrule {

/// Keeps one line of standard error up to date, twice a second, where that is a terminal; writes
/// nothing where it is not.
class Progress {
 public:
  /// `bytes_in_all` is the size of the input, if it is known.
  explicit Progress(std::optional<std::uint64_t> bytes_in_all);

  /// Takes note of a piece that is done.
  void add(std::uint64_t lines, std::uint64_t bytes);

  /// Wipes the line, before something else is written or at the end.
  void wipe();

 private:
  using Clock = std::chrono::steady_clock;

  std::string words(Clock::time_point now) const;

  bool is_watched_;
  std::optional<std::uint64_t> bytes_in_all_;
  Clock::time_point begun_;
  Clock::time_point shown_;
  std::uint64_t lines_ = 0;
  std::uint64_t bytes_ = 0;
  bool is_shown_ = false;
};

/// A number of seconds as `45 s`, `3 min 20 s`, `2 h 5 min`.
std::string duration_words(double seconds);

}  // namespace heelrule
