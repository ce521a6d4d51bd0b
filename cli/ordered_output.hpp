// Output that was made out of order, written in order.
#pragma once

#include <condition_variable>
#include <cstdint>
#include <functional>
#include <map>
#include <mutex>
#include <vector>

#include "cli/exit_status.hpp"
#include "engine/report/grade_lines.hpp"

namespace heelrule {

/// Writes graded pieces to standard output in the order of their numbers. Whoever brings the piece
/// that is due writes it, and all that follow it and are there; pieces that come early wait. So no
/// worker waits for a slow one until much has piled up: that is the back-pressure.
class OrderedOutput {
 public:
  /// `written` is told of each piece after it was written, by one thread at a time.
  using Written = std::function<void(const GradedLines&)>;
  explicit OrderedOutput(Written written) : written_(std::move(written)) {}

  /// Takes a piece, and gives back another one whose memory may be used again. False where nothing
  /// more is wanted: writing failed, or a piece was cut short.
  bool put(std::uint64_t number, GradedLines& piece);

  /// Takes no more, and lets everybody go who waits.
  void give_up();

  /// How writing went.
  ExitStatus status() const { return status_; }

 private:
  static constexpr std::size_t most_waiting = std::size_t{12} << 20U;  // bytes

  void write(std::unique_lock<std::mutex>& lock, const GradedLines& piece);

  std::mutex busy_;
  std::condition_variable moved_on_;
  std::map<std::uint64_t, GradedLines> waiting_;
  std::vector<GradedLines> spare_;
  std::size_t waiting_bytes_ = 0;
  std::uint64_t due_ = 0;
  bool is_over_ = false;
  ExitStatus status_ = ExitStatus::done;
  Written written_;
};

}  // namespace heelrule
