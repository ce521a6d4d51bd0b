// Texts without the blanks around them.
#pragma once

#include <string_view>

namespace heelrule {

/// `text` without blanks at its ends. Tabs and line ends are no blanks: a reader has dealt with
/// them before.
constexpr std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') {
    text.remove_prefix(1);
  }
  while (!text.empty() && text.back() == ' ') {
    text.remove_suffix(1);
  }
  return text;
}

}  // namespace heelrule
