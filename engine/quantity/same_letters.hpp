// Comparing short marks without regard to capitals.
#pragma once

#include <algorithm>
#include <string_view>

namespace heelrule {

/// Whether two texts are the same but for capital and small letters of ASCII: `eu` and `EU`.
constexpr bool same_letters(std::string_view a, std::string_view b) {
  const auto small = [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  };
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [small](char x, char y) { return small(x) == small(y); });
}

}  // namespace heelrule
