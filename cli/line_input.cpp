#include "cli/line_input.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <utility>

#include "cli/interruption.hpp"
#include "engine/reading/tree.hpp"

namespace heelrule {
namespace {

// About as much as one block of rows is made of.
constexpr std::size_t piece_bytes = std::size_t{64} << 10U;
constexpr int patience_milliseconds = 100;

// From one to the next: lines are long, and to look for a byte is quicker than to count them.
std::uint64_t line_feeds(std::string_view text) {
  std::uint64_t count = 0;
  for (std::size_t at = text.find('\n'); at != std::string_view::npos;
       at = text.find('\n', at + 1)) {
    ++count;
  }
  return count;
}

}  // namespace

Parsed<std::unique_ptr<LineInput>> LineInput::open(const std::string& path) {
  if (path == "-") {
    struct stat status{};
    const bool is_file = ::fstat(STDIN_FILENO, &status) == 0 && S_ISREG(status.st_mode);
    return std::unique_ptr<LineInput>(new LineInput(
        STDIN_FILENO, "standard input",
        is_file ? std::optional(static_cast<std::uint64_t>(status.st_size)) : std::nullopt));
  }
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
  struct stat status{};
  if (descriptor < 0 || ::fstat(descriptor, &status) != 0) {
    const int reason = errno;
    if (descriptor >= 0) {
      ::close(descriptor);
    }
    return Problem{fmt::format("cannot read `{}`: {}", path, std::strerror(reason)), ""};
  }
  if (!S_ISREG(status.st_mode)) {
    ::close(descriptor);
    return Problem{fmt::format("`{}` is no regular file", path),
                   "name a file, or write `-` and pipe it in"};
  }
  return std::unique_ptr<LineInput>(
      new LineInput(descriptor, path, static_cast<std::uint64_t>(status.st_size)));
}

LineInput::LineInput(int descriptor, std::string name, std::optional<std::uint64_t> size)
    : descriptor_(descriptor), name_(std::move(name)), size_(size) {}

LineInput::~LineInput() {
  if (descriptor_ > STDERR_FILENO) {
    ::close(descriptor_);
  }
}

// Drops the first of what is waiting.
void LineInput::forget(std::size_t bytes) {
  filled_ -= bytes;
  std::memmove(memory_.data(), memory_.data() + bytes, filled_);
}

// Appends to what is waiting; false where nothing more comes.
bool LineInput::read_more() {
  if (memory_.size() < filled_ + piece_bytes + JsonLineReader::padding) {
    memory_.resize(filled_ + piece_bytes + JsonLineReader::padding);
  }
  while (!at_end_ && !Interruption::wanted()) {
    // A read that blocks would not see an interruption that another thread has caught.
    pollfd ready{descriptor_, POLLIN, 0};
    if (::poll(&ready, 1, patience_milliseconds) == 0) {
      continue;
    }
    // One thread at a time reads on purpose: pieces keep their order, and poll said that this does
    // not wait. NOLINTNEXTLINE(clang-analyzer-unix.BlockInCriticalSection)
    const ssize_t got = ::read(descriptor_, memory_.data() + filled_, piece_bytes);
    if (got > 0) {
      filled_ += static_cast<std::size_t>(got);
      return true;
    }
    if (got < 0 && (errno == EINTR || errno == EAGAIN)) {
      continue;
    }
    failure_ = got < 0 ? errno : 0;
    at_end_ = true;
  }
  return false;
}

std::string LineInput::take_line() {
  while (waiting().find('\n') == std::string::npos && filled_ <= TreeLimits::bytes && read_more()) {
  }
  const std::size_t end = std::min(waiting().find('\n'), filled_);
  std::string line(waiting().substr(0, end));
  forget(std::min(end + 1, filled_));
  ++lines_;
  if (line.ends_with('\r')) {
    line.pop_back();
  }
  return line;
}

void LineInput::drop_rest_of_line() {
  filled_ = 0;
  while (read_more()) {
    const std::size_t end = waiting().find('\n');
    if (end != std::string::npos) {
      forget(end + 1);
      return;
    }
    filled_ = 0;
  }
}

bool LineInput::next(Chunk& chunk) {
  const std::lock_guard lock(busy_);
  std::size_t end = std::string::npos;
  while (filled_ < piece_bytes || (end = waiting().rfind('\n')) == std::string::npos) {
    if (filled_ > TreeLimits::bytes || !read_more()) {
      end = waiting().rfind('\n');
      break;
    }
  }
  if (Interruption::wanted() || failure_ != 0 || filled_ == 0) {
    return false;
  }
  const bool is_cut = end == std::string::npos && !at_end_;
  chunk.length = end == std::string::npos || at_end_ ? filled_ : end + 1;
  chunk.number = pieces_++;
  chunk.first_line = lines_ + 1;
  lines_ += line_feeds({memory_.data(), chunk.length});
  // The piece goes with the memory that it was read into; only the line that was begun is copied.
  const std::string_view begun = waiting().substr(chunk.length);
  if (chunk.memory.size() < begun.size()) {
    chunk.memory.resize(begun.size());
  }
  std::copy(begun.begin(), begun.end(), chunk.memory.begin());
  filled_ = begun.size();
  chunk.memory.swap(memory_);
  if (is_cut) {
    ++lines_;
    drop_rest_of_line();
  }
  return true;
}

void LineInput::stop() {
  const std::lock_guard lock(busy_);
  at_end_ = true;
  filled_ = 0;
}

}  // namespace heelrule
