#include "engine/reading/read_text.hpp"

#include <fmt/format.h>

namespace heelrule {
namespace {

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

Wording read_wording(const Node& node, std::string_view key, std::string language,
                     Diagnostics& diagnostics) {
  Located<std::string> text = read_plain_text(node, key, diagnostics);
  if (node.is_text() && text.value.find_first_not_of(" \n\t") == std::string::npos) {
    diagnostics.error(node.where, fmt::format("`{}` is empty", key), "write its words");
  }
  while (!text.value.empty() && text.value.back() == '\n') {
    text.value.pop_back();
  }
  return {std::move(language), std::move(text.value), text.where};
}

}  // namespace

bool is_language_tag(std::string_view tag) {
  std::size_t length = 0;
  bool first = true;
  for (const char c : tag) {
    if (c == '-') {
      if (length == 0 || (first && length < 2)) {
        return false;
      }
      length = 0;
      first = false;
      continue;
    }
    ++length;
    if (!(is_letter(c) || (!first && is_digit(c))) || length > 8 || (first && length > 3)) {
      return false;
    }
  }
  return length > (first ? 1 : 0);
}

Text read_text(const Node& node, std::string_view key, Diagnostics& diagnostics) {
  Text text;
  if (!node.is_map()) {
    text.wordings.push_back(read_wording(node, key, {}, diagnostics));
    return text;
  }
  for (const Entry& entry : node.entries) {
    if (!is_language_tag(entry.key.value)) {
      diagnostics.error(
          entry.key.where, fmt::format("`{}` is no language tag", entry.key.value),
          fmt::format("write `{}` as one text, in quotes if it begins with a brace, or as a map "
                      "such as `{{en: …, es: …}}`",
                      key));
      continue;
    }
    text.wordings.push_back(read_wording(entry.value, key, entry.key.value, diagnostics));
  }
  return text;
}

Text take_text(MapReader& map, std::string_view key) {
  const Node* node = map.take(key);
  return node == nullptr ? Text{} : read_text(*node, key, map.diagnostics());
}

Text require_text(MapReader& map, std::string_view key, std::string_view sample) {
  const Node* node = map.require(key, sample);
  return node == nullptr ? Text{} : read_text(*node, key, map.diagnostics());
}

}  // namespace heelrule
