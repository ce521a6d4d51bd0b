// Counting in what is written, for tests of what is drawn or printed.
#pragma once

#include <cstddef>
#include <string>

namespace heelrule {

/// How often `piece` stands in `text`, none within another.
inline std::size_t count(const std::string& text, const std::string& piece) {
  std::size_t found = 0;
  for (std::size_t at = text.find(piece); at != std::string::npos;
       at = text.find(piece, at + piece.size())) {
    ++found;
  }
  return found;
}

}  // namespace heelrule
