// A page of text for a terminal, a pipe or a printer, as it grows from top to bottom.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace heelrule {

/// Lays out words 80 columns wide. What a terminal would obey is shown safely.
class TextPage {
 public:
  enum class Tone { usual, urgent };

  /// With `colour`, titles and headings are painted by ANSI codes (ECMA-48): what they say is said
  /// in words all the same.
  explicit TextPage(bool colour) : colour_(colour) {}

  /// The title of the page, underlined.
  void title(std::string_view words);

  /// An empty line, and a heading.
  void heading(std::string_view words, Tone tone = Tone::usual);

  /// Words from edge to edge; nothing where there are none.
  void line(std::string_view words);

  ///     - words
  void item(std::string_view words);

  /// Words that belong to the item above: further in, and without a dash.
  void detail(std::string_view words);

  /// An item below an item.
  void inner_item(std::string_view words);

  ///     7. words
  void numbered(std::size_t number, std::string_view words);

  /// An empty line, and a row for each pair: the second words stand in a column. First words that
  /// are too long for theirs go on in lines of their own.
  void table(const std::vector<std::pair<std::string, std::string>>& rows);

  /// The page so far.
  std::string take() { return std::move(text_); }

 private:
  std::string painted(std::string_view words, Tone tone) const;

  bool colour_;
  std::string text_;
};

}  // namespace heelrule
