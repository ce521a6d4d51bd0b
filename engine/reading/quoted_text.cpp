#include "engine/reading/quoted_text.hpp"

namespace heelrule {

std::optional<std::size_t> quoted_length(std::string_view text) {
  const char quote = text.front();
  std::size_t at = 1;
  while (at < text.size()) {
    const bool doubled = quote == '\'' && text.substr(at).starts_with("''");
    if (doubled || (quote == '"' && text[at] == '\\')) {
      at += 2;
    } else if (text[at] == quote) {
      return at + 1;
    } else {
      ++at;
    }
  }
  return std::nullopt;
}

}  // namespace heelrule
