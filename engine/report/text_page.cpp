#include "engine/report/text_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/report/wrap.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::size_t width = 80;
constexpr std::size_t first_column = 48;  // of a table
constexpr std::string_view bold = "\x1b[1m";
constexpr std::string_view bold_red = "\x1b[1;31m";
constexpr std::string_view plain = "\x1b[0m";

std::string without_line_feed(std::string lines) {
  lines.pop_back();
  return lines;
}

std::size_t last_line_width(std::string_view lines) {
  return character_count(lines.substr(lines.rfind('\n') + 1));
}

}  // namespace

std::string TextPage::painted(std::string_view words, Tone tone) const {
  return colour_ ? fmt::format("{}{}{}", tone == Tone::urgent ? bold_red : bold, words, plain)
                 : std::string(words);
}

void TextPage::title(std::string_view words) {
  const std::string lines = without_line_feed(wrapped(words, 0, ""));
  const std::size_t length = std::min(character_count(lines), width);
  text_ += fmt::format("{}\n{}\n", painted(lines, Tone::usual), std::string(length, '='));
}

void TextPage::heading(std::string_view words, Tone tone) {
  text_ += fmt::format("\n{}\n", painted(without_line_feed(wrapped(words, 2, "")), tone));
}

void TextPage::line(std::string_view words) {
  if (!words.empty()) {
    text_ += wrapped(words, 0, "");
  }
}

void TextPage::item(std::string_view words) { text_ += wrapped(words, 4, "  - "); }

void TextPage::detail(std::string_view words) { text_ += wrapped(words, 6, "      "); }

void TextPage::inner_item(std::string_view words) { text_ += wrapped(words, 8, "      - "); }

void TextPage::numbered(std::size_t number, std::string_view words) {
  text_ += wrapped(words, 5, fmt::format("{:>3}. ", number));
}

void TextPage::table(const std::vector<std::pair<std::string, std::string>>& rows) {
  std::vector<std::string> titles;
  std::size_t longest = 0;
  for (const auto& [title, words] : rows) {
    titles.push_back(without_line_feed(wrapped(title, 4, "  ", first_column)));
    longest = std::max(longest, last_line_width(titles.back()));
  }
  text_ += rows.empty() ? "" : "\n";
  for (std::size_t i = 0; i < rows.size(); ++i) {
    text_ += fmt::format("{}{}  {}\n", titles[i],
                         std::string(longest - last_line_width(titles[i]), ' '), rows[i].second);
  }
}

}  // namespace heelrule
