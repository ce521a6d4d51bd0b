// The words and signs of a formula.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/quantity/quantity.hpp"
#include "engine/source/diagnostic.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

enum class TokenKind : std::uint8_t { word, quoted, value, sign, end };

struct Token {
  TokenKind kind = TokenKind::end;
  std::string text;  ///< of a word, a quoted text, or a sign
  Quantity value;
  Span where;
};

/// Splits a formula. Every fault is reported; tokens are given only if there was none. The last
/// token is `end`.
std::optional<std::vector<Token>> split_formula(const Located<std::string>& formula,
                                                Diagnostics& diagnostics);

}  // namespace heelrule
