#include "cli/ordered_output.hpp"

#include <utility>

#include "cli/output.hpp"

namespace heelrule {

bool OrderedOutput::put(std::uint64_t number, GradedLines& piece) {
  std::unique_lock lock(busy_);
  moved_on_.wait(lock, [&] {
    return is_over_ || number == due_ || waiting_bytes_ + piece.text.size() <= most_waiting;
  });
  if (is_over_) {
    return false;
  }
  if (number != due_) {
    waiting_bytes_ += piece.text.size();
    waiting_.emplace(number, std::move(piece));
    if (spare_.empty()) {
      piece = {};
    } else {
      piece = std::move(spare_.back());
      spare_.pop_back();
    }
    return true;
  }
  write(lock, piece);
  while (!is_over_ && !waiting_.empty() && waiting_.begin()->first == due_) {
    auto next = waiting_.extract(waiting_.begin());
    write(lock, next.mapped());
    waiting_bytes_ -= next.mapped().text.size();
    spare_.push_back(std::move(next.mapped()));
  }
  return !is_over_;
}

void OrderedOutput::give_up() {
  const std::lock_guard lock(busy_);
  is_over_ = true;
  moved_on_.notify_all();
}

// No other thread has the piece that is due, so this one alone writes.
void OrderedOutput::write(std::unique_lock<std::mutex>& lock, const GradedLines& piece) {
  lock.unlock();
  const ExitStatus wrote = write_output(piece.text.text());
  if (wrote == ExitStatus::done) {
    written_(piece);
  }
  lock.lock();
  if (wrote != ExitStatus::done || piece.is_cut_short) {
    status_ = wrote;
    is_over_ = true;
  }
  ++due_;
  moved_on_.notify_all();
}

}  // namespace heelrule
