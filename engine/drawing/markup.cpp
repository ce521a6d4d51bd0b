#include "engine/drawing/markup.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>
#include <utility>

#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";  // U+FFFD

// The blocks of combining marks that stack without end in any script (Unicode 15, Blocks.txt).
constexpr std::array<std::pair<char32_t, char32_t>, 6> stacking_marks{{
    {0x0300, 0x036F},
    {0x0483, 0x0489},
    {0x1AB0, 0x1AFF},
    {0x1DC0, 0x1DFF},
    {0x20D0, 0x20FF},
    {0xFE20, 0xFE2F},
}};

bool stacks(char32_t code) {
  return std::any_of(stacking_marks.begin(), stacking_marks.end(), [&](const auto& block) {
    return code >= block.first && code <= block.second;
  });
}

std::string_view reference(char32_t code) {
  switch (code) {
    case '&':
      return "&amp;";
    case '<':
      return "&lt;";
    case '>':
      return "&gt;";
    case '"':
      return "&quot;";
    case '\'':
      return "&#39;";
    default:
      return "";
  }
}

bool is_forbidden_control(const Character& c) {
  return c.bytes == 0 || (c.code < 0x20 && c.code != '\t' && c.code != '\n') ||
         (c.code >= 0x7F && c.code <= 0x9F);
}

bool is_plain(char32_t code) {
  return (code >= 'a' && code <= 'z') || (code >= 'A' && code <= 'Z') ||
         (code >= '0' && code <= '9') || code == ' ';
}

}  // namespace

std::string markup_text(std::string_view text) {
  std::string markup;
  markup.reserve(text.size() + text.size() / 8);
  int marks = 0;
  for (std::size_t at = 0; at < text.size();) {
    const Character c = first_character(text.substr(at));
    const std::string_view bytes = text.substr(at, std::max<std::size_t>(c.bytes, 1));
    at += bytes.size();
    marks = stacks(c.code) ? marks + 1 : 0;
    if (marks > most_combining_marks) {
      markup += marks == most_combining_marks + 1 ? replacement : std::string_view{};
    } else if (is_forbidden_control(c)) {
      markup += replacement;
    } else if (const std::string_view escaped = reference(c.code); !escaped.empty()) {
      markup += escaped;
    } else {
      markup += shown_safely(bytes == "\n" || bytes == "\t" ? " " : bytes);
    }
  }
  return markup;
}

std::string css_string(std::string_view text, std::size_t most) {
  std::string written = "\"";
  std::size_t count = 0;
  bool after_escape = false;  // which would take a blank for its own end
  for (std::size_t at = 0; at < text.size(); ++count) {
    if (count == most) {
      written += "\\002026";
      break;
    }
    const Character c = first_character(text.substr(at));
    const bool is_shown = !is_forbidden_control(c) && !stacks(c.code);
    const bool as_it_is = is_plain(c.code) && !(after_escape && c.code == ' ');
    after_escape = !as_it_is;
    if (as_it_is) {
      written += static_cast<char>(c.code);
    } else if (is_shown && shown_safely(text.substr(at, c.bytes)) == text.substr(at, c.bytes)) {
      fmt::format_to(std::back_inserter(written), "\\{:06x}", static_cast<unsigned>(c.code));
    } else {
      written += "\\00fffd";
    }
    at += std::max<std::size_t>(c.bytes, 1);
  }
  return written + "\"";
}

}  // namespace heelrule
