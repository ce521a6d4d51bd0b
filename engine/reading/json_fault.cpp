#include "engine/reading/json_fault.hpp"

#include <string>

namespace heelrule {
namespace {

bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

// A machine over the grammar of RFC 8259 with its own stack of open brackets. It accepts or stops;
// it keeps nothing.
class Scanner {
 public:
  explicit Scanner(std::string_view text) : text_(text) {}

  std::size_t fault() {
    bool value_due = true;
    while (true) {
      skip_blanks();
      if (at_ == text_.size()) {
        return at_;
      }
      const char c = text_[at_];
      if (value_due) {
        if (c == '{' || c == '[') {
          open_ += c;
          ++at_;
          value_due = c == '[' ? !next_is(']') : false;
          if (c == '{' && !next_is('}') && !key()) {
            return at_;
          }
          value_due = value_due || (c == '{' && after_key_);
          after_key_ = false;
          continue;
        }
        if (!scalar()) {
          return at_;
        }
        value_due = false;
        continue;
      }
      if (open_.empty()) {
        return at_;  // something follows the document
      }
      if (c == ',') {
        ++at_;
        if (open_.back() == '{' && !key()) {
          return at_;
        }
        after_key_ = false;
        value_due = true;
      } else if (c == (open_.back() == '{' ? '}' : ']')) {
        open_.pop_back();
        ++at_;
      } else {
        return at_;
      }
    }
  }

 private:
  void skip_blanks() {
    while (at_ < text_.size() && is_blank(text_[at_])) {
      ++at_;
    }
  }

  bool next_is(char c) {
    skip_blanks();
    return at_ < text_.size() && text_[at_] == c;
  }

  // A key and its colon.
  bool key() {
    skip_blanks();
    if (!next_is('"') || !string() || !next_is(':')) {
      return false;
    }
    ++at_;
    after_key_ = true;
    return true;
  }

  bool string() {
    const std::size_t begin = at_;
    for (++at_; at_ < text_.size(); ++at_) {
      const char c = text_[at_];
      if (c == '"') {
        ++at_;
        return true;
      }
      if (static_cast<unsigned char>(c) < 0x20) {
        break;
      }
      if (c == '\\') {
        ++at_;
        if (at_ == text_.size() ||
            std::string_view("\"\\/bfnrtu").find(text_[at_]) == std::string_view::npos) {
          --at_;
          return false;
        }
      }
    }
    at_ = begin;
    return false;
  }

  bool scalar() {
    if (text_[at_] == '"') {
      return string();
    }
    for (const std::string_view word : {"true", "false", "null"}) {
      if (text_.substr(at_).starts_with(word)) {
        at_ += word.size();
        return true;
      }
    }
    return number();
  }

  bool number() {
    std::size_t end = at_;
    while (end < text_.size() &&
           (is_digit(text_[end]) ||
            std::string_view("+-.eE").find(text_[end]) != std::string_view::npos)) {
      ++end;
    }
    if (end == at_) {
      return false;
    }
    at_ = end;
    return true;
  }

  std::string_view text_;
  std::string open_;
  std::size_t at_ = 0;
  bool after_key_ = false;
};

}  // namespace

Span json_fault(std::string_view text, std::uint32_t source) {
  const auto at = static_cast<std::uint32_t>(Scanner(text).fault());
  return {source, at, at};
}

}  // namespace heelrule
