#include "engine/reading/text_gate.hpp"

#include <fmt/format.h>

#include "engine/reading/tree.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {

bool passes_gate(std::string_view text, std::uint32_t source, Diagnostics& diagnostics) {
  if (text.size() > TreeLimits::bytes) {
    diagnostics.error({source, 0, 0},
                      fmt::format("the file is larger than {} MiB", TreeLimits::bytes >> 20U),
                      "split it");
    return false;
  }
  const auto offence = first_offence(text);
  if (!offence) {
    return true;
  }
  const auto begin = static_cast<std::uint32_t>(offence->offset);
  diagnostics.error({source, begin, begin + static_cast<std::uint32_t>(offence->bytes)},
                    fmt::format("the file holds {}", offence->what),
                    "save it as plain UTF-8 text, without that character");
  return false;
}

std::string_view without_byte_order_mark(std::string_view text) {
  constexpr std::string_view mark = "\xEF\xBB\xBF";
  return text.starts_with(mark) ? text.substr(mark.size()) : text;
}

}  // namespace heelrule
