// A long input, handed out in pieces of whole lines.
#pragma once

#include <cstdint>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/quantity/parsed.hpp"
#include "engine/report/grade_lines.hpp"

namespace heelrule {

/// A piece of the input with the memory that it stands in.
struct Chunk {
  std::uint64_t number = 0;  ///< 0, 1, 2, … in the order of the input
  std::uint64_t first_line = 1;
  std::vector<char> memory;  ///< the text, and at least the padding behind it
  std::size_t length = 0;    ///< of the text

  Lines lines() const { return {{memory.data(), length}, first_line}; }
};

/// Reads a file, or standard input, piece by piece. No more of it is held than the piece at hand
/// and the rest of a line. A line that is longer than TreeLimits::bytes is cut there, so that
/// memory stays bounded and the line is refused as too long.
class LineInput {
 public:
  /// Opens a regular file, or standard input for `-`.
  static Parsed<std::unique_ptr<LineInput>> open(const std::string& path);
  ~LineInput();
  LineInput(const LineInput&) = delete;
  LineInput& operator=(const LineInput&) = delete;
  LineInput(LineInput&&) = delete;
  LineInput& operator=(LineInput&&) = delete;

  /// The name for messages.
  const std::string& name() const { return name_; }

  /// How many bytes there are, if that is known beforehand.
  std::optional<std::uint64_t> size() const { return size_; }

  /// Takes the first line off, without its line break: the header of a table.
  std::string take_line();

  /// The next piece; false at the end, after `stop`, on an interruption, or where reading failed.
  /// May be called from several threads.
  bool next(Chunk& chunk);

  /// Hands out no more.
  void stop();

  /// Why reading failed; 0 if it did not.
  int failure() const { return failure_; }

 private:
  LineInput(int descriptor, std::string name, std::optional<std::uint64_t> size);

  std::string_view waiting() const { return {memory_.data(), filled_}; }
  void forget(std::size_t bytes);
  bool read_more();
  void drop_rest_of_line();

  int descriptor_;
  std::string name_;
  std::optional<std::uint64_t> size_;
  std::mutex busy_;
  std::vector<char> memory_;
  std::size_t filled_ = 0;  // of it: read, and not handed out
  std::uint64_t pieces_ = 0;
  std::uint64_t lines_ = 0;
  int failure_ = 0;
  bool at_end_ = false;
};

}  // namespace heelrule
