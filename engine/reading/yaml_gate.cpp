#include "engine/reading/yaml_gate.hpp"

#include <fmt/format.h>

#include "engine/reading/tree.hpp"

namespace heelrule {
namespace {

constexpr std::size_t longest_opener_run = 256;

}  // namespace

bool passes_yaml_gate(std::string_view text, std::uint32_t source, Diagnostics& diagnostics) {
  std::size_t signs = 0;
  std::size_t openers_in_a_row = 0;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const char c = text[at];
    const bool opens = c == '[' || c == '{';
    const auto begin = static_cast<std::uint32_t>(at);
    if ((opens || c == ',' || c == ':') && ++signs > TreeLimits::values) {
      diagnostics.error({source, begin, begin + 1},
                        fmt::format("this file holds more than {} values", TreeLimits::values),
                        "split it");
      return false;
    }
    if (opens && ++openers_in_a_row > longest_opener_run) {
      diagnostics.error({source, begin, begin + 1},
                        fmt::format("more than {} brackets open in a row", longest_opener_run),
                        "no rule set or inspection needs that");
      return false;
    }
    if (!opens && std::string_view(" ,\n\r\t-?").find(c) == std::string_view::npos) {
      openers_in_a_row = 0;
    }
  }
  return true;
}

}  // namespace heelrule
