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

constexpr std::array<std::string_view, 8> keywords{"and", "or",   "not",  "is",
                                                   "if",  "then", "else", "yes"};

class Splitter {
 public:
  Splitter(const Located<std::string>& formula, Diagnostics& diagnostics)
      : text_(formula.value), where_(formula.where), diagnostics_(diagnostics) {}

  std::optional<std::vector<Token>> split() {
    while (at_ < text_.size() && ok_) {
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
      return;
    }
    at_ = close + 1;
    tokens_.push_back(
        {TokenKind::quoted, text_.substr(begin + 1, close - begin - 1), {}, span(begin, at_)});
  }

  void take_value() {
    const std::size_t begin = at_;
    while (is_digit(peek(0)) || peek(0) == '.' || (peek(0) == ',' && is_digit(peek(1)))) {
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
      if (word == "no" || std::find(keywords.begin(), keywords.end(), word) != keywords.end()) {
        return {};
      }
    }
    if (length > 0) {
      at_ = start + length;
    }
    return rest.substr(0, length);
  }

  void take_sign() {
    constexpr std::array<std::string_view, 12> signs{"<=", ">=", "<", ">", "+", "-",
                                                     "*",  "/",  "(", ")", ",", "="};
    const std::string_view rest = std::string_view(text_).substr(at_);
    for (const std::string_view sign : signs) {
      if (rest.starts_with(sign)) {
        if (sign == "=") {
          fail(at_, at_ + 1, {"`=` is no sign of a formula", "write `is` or `is not`"});
          return;
        }
        tokens_.push_back({TokenKind::sign, std::string(sign), {}, span(at_, at_ + sign.size())});
        at_ += sign.size();
        return;
      }
    }
    const std::size_t bytes = std::max<std::size_t>(first_character(rest).bytes, 1);
    fail(at_, at_ + bytes,
         {fmt::format("`{}` is no sign of a formula", rest.substr(0, bytes)),
          "use `+ - * / ( ) < <= > >=` and the words `and or not is if then else`"});
  }

  const std::string& text_;
  Span where_;
  Diagnostics& diagnostics_;
  std::vector<Token> tokens_;
  std::size_t at_ = 0;
  bool ok_ = true;
};

}  // namespace

std::optional<std::vector<Token>> split_formula(const Located<std::string>& formula,
                                                Diagnostics& diagnostics) {
  return Splitter(formula, diagnostics).split();
}

}  // namespace heelrule
