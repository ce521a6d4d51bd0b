#include "engine/report/wrap.hpp"

#include <algorithm>

#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::string_view blanks = " \t\r\n";

// More marks than this on one letter are no writing but a smear over the lines around it.
constexpr std::size_t most_marks = 4;

// The blocks of Unicode 15 that hold nothing but combining marks: they take no column of their own.
bool is_combining_mark(char32_t code) {
  return (code >= 0x0300 && code <= 0x036F) || (code >= 0x1AB0 && code <= 0x1AFF) ||
         (code >= 0x1DC0 && code <= 0x1DFF) || (code >= 0x20D0 && code <= 0x20FF) ||
         (code >= 0xFE20 && code <= 0xFE2F);
}

struct Word {
  std::string text;
  std::size_t columns = 0;
};

// A word fit for a terminal: as `shown_safely`, and without the marks that pile up on one letter.
Word shown(std::string_view written) {
  const std::string safe = shown_safely(written);
  Word word;
  std::size_t marks = 0;
  for (std::size_t at = 0; at < safe.size();) {
    const Character c = first_character(std::string_view(safe).substr(at));
    const bool mark = is_combining_mark(c.code);
    marks = mark ? marks + 1 : 0;
    if (marks <= most_marks) {
      word.text.append(safe, at, c.bytes);
      word.columns += mark ? 0 : 1;
    }
    at += c.bytes;
  }
  return word;
}

}  // namespace

std::string wrapped(std::string_view text, std::size_t indent, std::string_view first,
                    std::size_t width) {
  std::string lines(first);
  std::size_t column = character_count(first);
  bool line_is_empty = true;
  std::size_t at = text.find_first_not_of(blanks);
  while (at != std::string_view::npos) {
    const std::size_t end = std::min(text.find_first_of(blanks, at), text.size());
    const Word word = shown(text.substr(at, end - at));
    if (!line_is_empty && column + 1 + word.columns > width) {
      lines += '\n';
      lines.append(indent, ' ');
      column = indent;
      line_is_empty = true;
    }
    if (!line_is_empty) {
      lines += ' ';
      ++column;
    }
    lines += word.text;
    column += word.columns;
    line_is_empty = false;
    at = text.find_first_not_of(blanks, end);
  }
  return lines + '\n';
}

}  // namespace heelrule
