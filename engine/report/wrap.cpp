#include "engine/report/wrap.hpp"

#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::string_view blanks = " \t\r\n";

}  // namespace

std::string wrapped(std::string_view text, std::size_t indent, std::string_view first,
                    std::size_t width) {
  std::string lines(first);
  std::size_t column = character_count(first);
  bool line_is_empty = true;
  std::size_t at = text.find_first_not_of(blanks);
  while (at != std::string_view::npos) {
    const std::size_t end = std::min(text.find_first_of(blanks, at), text.size());
    const std::string word = shown_safely(text.substr(at, end - at));
    const std::size_t length = character_count(word);
    if (!line_is_empty && column + 1 + length > width) {
      lines += '\n';
      lines.append(indent, ' ');
      column = indent;
      line_is_empty = true;
    }
    if (!line_is_empty) {
      lines += ' ';
      ++column;
    }
    lines += word;
    column += length;
    line_is_empty = false;
    at = text.find_first_not_of(blanks, end);
  }
  return lines + '\n';
}

}  // namespace heelrule
