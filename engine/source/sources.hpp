// The texts that were read, and where their lines begin.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/source/span.hpp"

namespace heelrule {

/// A line and column as people count them: from 1, columns in characters (Unicode code points).
struct LinePosition {
  std::uint64_t line = 1;
  std::uint32_t column = 1;

  bool operator==(const LinePosition&) const = default;
};

/// Every text that took part in a run, so that any Span can be shown. Texts are only ever added.
class Sources {
 public:
  /// Adds a text under the name that messages print; gives the number that spans of it carry. Where
  /// it is a piece of a file, `first_line` is the number that its first line has there.
  std::uint32_t add(std::string name, std::string text, std::uint64_t first_line = 1);

  std::size_t size() const { return texts_.size(); }
  std::string_view name(std::uint32_t source) const { return texts_[source].name; }
  std::string_view text(std::uint32_t source) const { return texts_[source].text; }

  /// The text that a span covers.
  std::string_view text(Span span) const;

  /// Where a byte offset lies. An offset past the end counts as the end.
  LinePosition position(std::uint32_t source, std::uint32_t offset) const;

  /// The line (without its line break) in which an offset lies.
  std::string_view line(std::uint32_t source, std::uint32_t offset) const;

 private:
  struct Text {
    std::string name;
    std::string text;
    std::vector<std::uint32_t> line_starts;
    std::uint64_t first_line = 1;
  };

  std::size_t line_index(const Text& text, std::uint32_t offset) const;

  std::vector<Text> texts_;
};

}  // namespace heelrule
