#include "engine/formula/token.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "engine/quantity/nearest.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_'; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

// After a number a word is its unit, unless it is one of these.
constexpr std::array<std::string_view, 9> keywords{"and",  "or",   "not", "is", "if",
                                                   "then", "else", "yes", "no"};

class Splitter {
 public:
  Splitter(const Located<std::string>& formula, Diagnostics& diagnostics)
      : text_(formula.value), where_(formula.where), diagnostics_(diagnostics) {}

  std::optional<std::vector<Token>> split() {
    while (at_ < text_.size()) {
      const char c = text_[at_];
      if (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
        ++at_;
      } else if (is_digit(c) || (c == '.' && is_digit(peek(1)))) {
        take_value();
      } else if (is_letter(c)) {
        take_word();
      } else if (c == '"') {
        take_quoted();
      } else {
        take_sign();
      }
    }
    if (!ok_) {
      return std::nullopt;
    }
    tokens_.push_back({TokenKind::end, {}, {}, span(text_.size(), text_.size())});
    return std::move(tokens_);
  }

 private:
  char peek(std::size_t ahead) const {
    return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
  }

  Span span(std::size_t begin, std::size_t end) const {
    if (where_.end - where_.begin != text_.size()) {
      return where_;
    }
    const auto first = where_.begin + static_cast<std::uint32_t>(begin);
    return {where_.source, first, where_.begin + static_cast<std::uint32_t>(end)};
  }

  void fail(std::size_t begin, std::size_t end, const Problem& problem) {
    diagnostics_.error(span(begin, end), problem);
    ok_ = false;
  }

  void take_word() {
    const std::size_t begin = at_;
    while (is_letter(peek(0)) || is_digit(peek(0))) {
      ++at_;
    }
    tokens_.push_back({TokenKind::word, text_.substr(begin, at_ - begin), {}, span(begin, at_)});
  }

  void take_quoted() {
    const std::size_t begin = at_;
    const std::size_t close = text_.find('"', at_ + 1);
    if (close == std::string::npos) {
      fail(begin, text_.size(), {"this text has no closing quote", "write the closing `\"`"});
      at_ = text_.size();
      return;
    }
    at_ = close + 1;
    tokens_.push_back(
        {TokenKind::quoted, text_.substr(begin + 1, close - begin - 1), {}, span(begin, at_)});
  }

  void take_value() {
    const std::size_t begin = at_;
    while (is_digit(peek(0)) || peek(0) == '.' || is_decimal_comma()) {
      ++at_;
    }
    const std::size_t number_end = at_;
    const std::string_view unit = take_unit();
    const std::string number = text_.substr(begin, number_end - begin);
    const auto value = parse_quantity(unit.empty() ? number : fmt::format("{} {}", number, unit));
    if (value) {
      tokens_.push_back({TokenKind::value, {}, *value, span(begin, at_)});
    } else {
      fail(begin, at_, value.problem());
    }
  }

  // `24,3` gets a hint of its own; between the values of a call a comma only parts them.
  bool is_decimal_comma() const {
    const bool parts_values = !in_call_.empty() && in_call_.back();
    return peek(0) == ',' && is_digit(peek(1)) && !parts_values;
  }

  // The longest unit that stands here, or the word that stands where a unit would; else nothing.
  std::string_view take_unit() {
    std::size_t start = at_;
    while (start < text_.size() && text_[start] == ' ') {
      ++start;
    }
    const std::string_view rest = std::string_view(text_).substr(start);
    std::size_t length = 0;
    for (std::size_t i = 0; i < unit_spelling_count(); ++i) {
      const std::string_view spelling = unit_spelling(i);
      const bool ends = rest.size() == spelling.size() || !is_letter(spelling.back()) ||
                        (rest.size() > spelling.size() && !is_letter(rest[spelling.size()]));
      if (spelling.size() > length && rest.starts_with(spelling) && ends) {
        length = spelling.size();
      }
    }
    if (length == 0) {
      while (length < rest.size() && is_letter(rest[length])) {
        ++length;
      }
      const std::string_view word = rest.substr(0, length);
      if (std::find(keywords.begin(), keywords.end(), word) != keywords.end()) {
        return {};
      }
    }
    if (length > 0) {
      at_ = start + length;
    }
    return rest.substr(0, length);
  }

  void take_sign() {
    if (const std::string_view sign = sign_at(at_); !sign.empty()) {
      note_bracket(sign);
      tokens_.push_back({TokenKind::sign, std::string(sign), {}, span(at_, at_ + sign.size())});
      at_ += sign.size();
      return;
    }
    const std::size_t begin = at_;
    while (at_ < text_.size() && is_foreign(at_)) {
      at_ += std::max<std::size_t>(first_character(std::string_view(text_).substr(at_)).bytes, 1);
    }
    const std::string foreign = text_.substr(begin, at_ - begin);
    fail(begin, at_,
         {fmt::format("`{}` is no sign of a formula", foreign),
          foreign.find('=') != std::string::npos
              ? "write `is` or `is not`"
              : "use `+ - * / ( ) < <= > >=` and the words `and or not is if then else`"});
  }

  // The sign that stands at a place; empty if there is none.
  std::string_view sign_at(std::size_t at) const {
    constexpr std::array<std::string_view, 11> signs{"<=", ">=", "<", ">", "+", "-",
                                                     "*",  "/",  "(", ")", ","};
    for (const std::string_view sign : signs) {
      if (std::string_view(text_).substr(at).starts_with(sign)) {
        return sign;
      }
    }
    return {};
  }

  // What no formula holds.
  bool is_foreign(std::size_t at) const {
    const char c = text_[at];
    const bool known = is_letter(c) || is_digit(c) || c == '"' ||
                       std::string_view(" \t\n\r").find(c) != std::string_view::npos;
    return !known && sign_at(at).empty();
  }

  void note_bracket(std::string_view sign) {
    if (sign == "(") {
      in_call_.push_back(!tokens_.empty() && tokens_.back().kind == TokenKind::word);
    } else if (sign == ")" && !in_call_.empty()) {
      in_call_.pop_back();
    }
  }

  const std::string& text_;
  Span where_;
  Diagnostics& diagnostics_;
  std::vector<Token> tokens_;
  std::vector<bool> in_call_;  // of each open bracket: whether it follows a name
  std::size_t at_ = 0;
  bool ok_ = true;
};

}  // namespace

std::optional<std::vector<Token>> split_formula(const Located<std::string>& formula,
                                                Diagnostics& diagnostics) {
  return Splitter(formula, diagnostics).split();
}

}  // namespace heelrule
