#include "engine/report/yaml_text.hpp"

#include <fmt/format.h>

#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

bool is_unseen(char32_t code) {
  return code < 0x20 || (code >= 0x7F && code < 0xA0) || code == 0x2028 || code == 0x2029 ||
         code == 0x061C || code == 0x200E || code == 0x200F || (code >= 0x202A && code <= 0x202E) ||
         (code >= 0x2066 && code <= 0x2069) || code == 0xFEFF;
}

}  // namespace

std::string yaml_text(std::string_view value) {
  std::string text = "\"";
  while (!value.empty()) {
    const Character next = first_character(value);
    if (next.bytes == 0) {
      text += "\xEF\xBF\xBD";
      value.remove_prefix(1);
      continue;
    }
    if (next.code == '"' || next.code == '\\') {
      text += '\\';
    }
    if (next.code == '\n') {
      text += "\\n";
    } else if (next.code == '\t') {
      text += "\\t";
    } else if (is_unseen(next.code)) {
      text += fmt::format("\\u{:04X}", static_cast<unsigned>(next.code));
    } else {
      text += value.substr(0, next.bytes);
    }
    value.remove_prefix(next.bytes);
  }
  return text + '"';
}

}  // namespace heelrule
