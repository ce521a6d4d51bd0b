#include "engine/reading/json_fault.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <string>

#include "engine/reading/tree.hpp"

namespace heelrule {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

// What may come next.
enum class Due : std::uint8_t {
  value,
  value_or_close,
  key,
  key_or_close,
  colon,
  comma_or_close,
  end
};

// A machine over the grammar with its own stack of open brackets; it keeps nothing of what it
// reads.
class Scanner {
 public:
  Scanner(std::string_view text, std::uint32_t source) : text_(text), source_(source) {}

  std::optional<Located<Problem>> fault() {
    while (!found_) {
      skip_blanks();
      if (at_ == text_.size()) {
        at_end();
        break;
      }
      step();
    }
    return found_;
  }

 private:
  void step() {
    const char c = text_[at_];
    const bool closes = c == (in_map() ? '}' : ']') && !open_.empty();
    if (closes && due_ != Due::value && due_ != Due::key && due_ != Due::colon) {
      open_.pop_back();
      ++at_;
      after_value();
    } else if (due_ == Due::value || due_ == Due::value_or_close) {
      value(c);
    } else if ((due_ == Due::key || due_ == Due::key_or_close) && c == '"') {
      string();
      due_ = Due::colon;
    } else if (due_ == Due::colon && c == ':') {
      ++at_;
      due_ = Due::value;
    } else if (due_ == Due::comma_or_close && c == ',') {
      ++at_;
      due_ = in_map() ? Due::key : Due::value;
    } else {
      fail(at_, at_ + 1, {fmt::format("{} is due here", what_is_due()), hint()});
    }
  }

  bool in_map() const { return !open_.empty() && open_.back() == '{'; }

  void after_value() { due_ = open_.empty() ? Due::end : Due::comma_or_close; }

  void value(char c) {
    if (c == '{' || c == '[') {
      if (open_.size() == TreeLimits::depth) {
        fail(at_, at_ + 1,
             {fmt::format("this is nested more than {} deep", TreeLimits::depth),
              "no rule set or inspection needs that"});
      }
      open_ += c;
      ++at_;
      due_ = c == '{' ? Due::key_or_close : Due::value_or_close;
      return;
    }
    if (c == '"') {
      string();
    } else {
      word();
    }
    after_value();
  }

  void string() {
    const std::size_t begin = at_;
    for (++at_; at_ < text_.size() && text_[at_] != '\n'; ++at_) {
      if (text_[at_] == '"') {
        ++at_;
        return;
      }
      if (text_[at_] == '\t') {
        fail(at_, at_ + 1, {"a tab stands in this text", "write `\\t`, or a blank"});
        return;
      }
      if (text_[at_] == '\\' && !escape()) {
        return;
      }
    }
    fail(begin, at_, {"this quote is not closed on its line", "write the closing `\"`"});
  }

  // Passes over a backslash and all but the last sign of what follows it.
  bool escape() {
    const std::size_t begin = at_++;
    if (at_ < text_.size() && text_[at_] == 'u') {
      const auto first = code_unit();
      const bool high = first && *first >= 0xD800 && *first < 0xDC00;
      const bool low = first && *first >= 0xDC00 && *first < 0xE000;
      if (high && text_.substr(at_ + 1).starts_with("\\u")) {
        at_ += 2;
        const auto second = code_unit();
        if (second && *second >= 0xDC00 && *second < 0xE000) {
          return true;
        }
      } else if (first && !high && !low) {
        return true;
      }
    } else if (at_ < text_.size() &&
               std::string_view("\"\\/bfnrt").find(text_[at_]) != std::string_view::npos) {
      return true;
    }
    fail(begin, at_ + 1, {"this backslash sequence is not known", "write `\\\\` for a backslash"});
    return false;
  }

  // The number of four hexadecimal digits after `u`; ends at the last of them.
  std::optional<unsigned> code_unit() {
    unsigned code = 0;
    for (int i = 0; i < 4; ++i) {
      const char c = at_ + 1 < text_.size() ? text_[at_ + 1] : '\0';
      const bool letter = (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
      if (!is_digit(c) && !letter) {
        return std::nullopt;
      }
      code = code * 16 + static_cast<unsigned>(is_digit(c) ? c - '0' : (c | 0x20) - 'a' + 10);
      ++at_;
    }
    return code;
  }

  // A number, `true`, `false` or `null`, up to the next sign of JSON's own.
  void word() {
    const std::size_t begin = at_;
    at_ = std::min(text_.find_first_of(" \t\r\n,:[]{}\"", at_), text_.size());
    const std::string_view word = text_.substr(begin, at_ - begin);
    if (word == "true" || word == "false" || word == "null") {
      return;
    }
    if (word.empty()) {
      fail(begin, begin + 1, {fmt::format("{} is due here", what_is_due()), hint()});
    } else if (!is_number(word)) {
      fail(begin, at_, {fmt::format("`{}` is no value of JSON", word), value_hint});
    } else if (is_too_large(word)) {
      fail(begin, at_, {fmt::format("`{}` is too large for a number", word), value_hint});
    }
  }

  static std::size_t digits(std::string_view text, std::size_t at) {
    const std::size_t end = text.find_first_not_of("0123456789", at);
    return (end == std::string_view::npos ? text.size() : end) - at;
  }

  static bool is_number(std::string_view word) {
    std::size_t at = word.starts_with('-') ? 1 : 0;
    const std::size_t whole = digits(word, at);
    if (whole == 0 || (whole > 1 && word[at] == '0')) {
      return false;
    }
    at += whole;
    if (at < word.size() && word[at] == '.') {
      const std::size_t decimals = digits(word, ++at);
      at += decimals == 0 ? word.size() + 1 : decimals;
    }
    if (at < word.size() && (word[at] == 'e' || word[at] == 'E')) {
      ++at;
      at += at < word.size() && (word[at] == '+' || word[at] == '-') ? 1 : 0;
      const std::size_t exponent = at < word.size() ? digits(word, at) : 0;
      at += exponent == 0 ? word.size() + 1 : exponent;
    }
    return at == word.size();
  }

  // More than 18 digits, or a power of ten of three.
  static bool is_too_large(std::string_view word) {
    const std::size_t e = word.find_first_of("eE");
    if (digits(word, word.starts_with('-') ? 1 : 0) > 18) {
      return true;
    }
    if (e == std::string_view::npos || word[e + 1] == '-') {
      return false;
    }
    return digits(word, e + (word[e + 1] == '+' ? 2 : 1)) > 2;
  }

  std::string what_is_due() const {
    const std::string_view close = in_map() ? "`}`" : "`]`";
    switch (due_) {
      case Due::value:
        return "a value";
      case Due::value_or_close:
        return "a value or `]`";
      case Due::key:
        return "a key in quotes";
      case Due::key_or_close:
        return "a key in quotes or `}`";
      case Due::colon:
        return "`:`";
      case Due::comma_or_close:
        return fmt::format("`,` or {}", close);
      case Due::end:
        return "the end of the file";
    }
    return {};
  }

  std::string hint() const {
    switch (due_) {
      case Due::value:
      case Due::value_or_close:
        return value_hint;
      case Due::key:
      case Due::key_or_close:
        return "write `\"key\": value`, and no comma after the last one";
      case Due::colon:
        return "write `\"key\": value`";
      case Due::comma_or_close:
        return "part values by commas, and write a value with its unit in quotes: `\"243 mm\"`";
      case Due::end:
        return "one file holds one record; look for a bracket closed too early";
    }
    return {};
  }

  void skip_blanks() { at_ = std::min(text_.find_first_not_of(" \t\r\n", at_), text_.size()); }

  void fail(std::size_t begin, std::size_t end, Problem problem) {
    if (!found_) {
      found_ = {std::move(problem),
                {source_, static_cast<std::uint32_t>(begin),
                 static_cast<std::uint32_t>(std::min(end, text_.size()))}};
    }
  }

  void at_end() {
    if (due_ == Due::end) {
      return;
    }
    const std::size_t last = text_.find_last_not_of(" \t\r\n");
    const std::size_t end = last == std::string_view::npos ? 0 : last + 1;
    fail(end, end,
         {fmt::format("the file ends where {} is due", what_is_due()),
          open_.empty() ? value_hint : "write what is missing, up to the last closing bracket"});
  }

  static constexpr const char* value_hint =
      "write texts, and values with a unit, in quotes: `\"243 mm\"`";

  std::string_view text_;
  std::uint32_t source_;
  std::string open_;
  Due due_ = Due::value;
  std::size_t at_ = 0;
  std::optional<Located<Problem>> found_;
};

}  // namespace

std::optional<Located<Problem>> json_fault(std::string_view text, std::uint32_t source) {
  return Scanner(text, source).fault();
}

}  // namespace heelrule
