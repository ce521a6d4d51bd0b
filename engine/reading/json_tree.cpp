#include "engine/reading/json_tree.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <map>
#include <string>

#include "engine/reading/json_fault.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

// UTF-8 (RFC 3629) of a code point.
void append_character(std::string& text, std::uint32_t code) {
  const auto put = [&](std::uint32_t byte) { text += static_cast<char>(byte); };
  const auto tail = [&](unsigned shift) { put(0x80U | ((code >> shift) & 0x3FU)); };
  if (code < 0x80) {
    put(code);
  } else if (code < 0x800) {
    put(0xC0U | (code >> 6U));
    tail(0);
  } else if (code < 0x10000) {
    put(0xE0U | (code >> 12U));
    tail(6);
    tail(0);
  } else {
    put(0xF0U | (code >> 18U));
    tail(12);
    tail(6);
    tail(0);
  }
}

// What `\uXXXX` stands for, given the text behind the `u`.
std::uint32_t code_unit(std::string_view digits) {
  std::uint32_t code = 0;
  for (const char c : digits.substr(0, 4)) {
    code = code * 16 + static_cast<std::uint32_t>(c <= '9' ? c - '0' : (c | 0x20) - 'a' + 10);
  }
  return code;
}

constexpr std::string_view escaped_signs = "bfnrt";
constexpr std::string_view meant_signs = "\b\f\n\r\t";

// The words that a text between quotation marks stands for. The grammar has been checked.
std::string without_escapes(std::string_view written) {
  std::string words;
  words.reserve(written.size());
  while (!written.empty()) {
    const std::size_t plain = std::min(written.find('\\'), written.size());
    words += written.substr(0, plain);
    written.remove_prefix(plain);
    if (written.empty()) {
      break;
    }
    const char sign = written[1];
    written.remove_prefix(2);
    if (sign != 'u') {
      const std::size_t at = escaped_signs.find(sign);
      words += at == std::string_view::npos ? sign : meant_signs[at];
      continue;
    }
    std::uint32_t code = code_unit(written);
    written.remove_prefix(4);
    if (code >= 0xD800 && code < 0xDC00) {
      code = 0x10000U + ((code - 0xD800U) << 10U) + (code_unit(written.substr(2)) - 0xDC00U);
      written.remove_prefix(6);
    }
    append_character(words, code);
  }
  return words;
}

// Walks over a text that is known to be JSON, and not nested too deep.
class Walker {
 public:
  Walker(std::string_view text, std::uint32_t source, Diagnostics& diagnostics)
      : text_(text), source_(source), diagnostics_(diagnostics) {}

  std::optional<Node> walk() {
    Node node = value();
    return ok_ ? std::optional(std::move(node)) : std::nullopt;
  }

 private:
  static constexpr std::string_view blanks = " \t\r\n";
  static constexpr std::string_view after_word = " \t\r\n,:]}";

  char next() {
    at_ = text_.find_first_not_of(blanks, at_);
    return text_[at_];
  }

  // Whether an item or field comes next. Passes over the comma in front of it, or the closing sign.
  bool more(char closing) {
    const char sign = next();
    at_ += sign == ',' || sign == closing ? 1 : 0;
    return sign != closing;
  }

  Span span(std::size_t begin, std::size_t end) const {
    return {source_, static_cast<std::uint32_t>(begin), static_cast<std::uint32_t>(end)};
  }

  void fail(Span where, std::string message, std::string hint) {
    diagnostics_.error(where, std::move(message), std::move(hint));
    ok_ = false;
  }

  Node value() {
    Node node;
    const char sign = next();
    if (++values_ > TreeLimits::values) {
      fail(span(at_, at_), fmt::format("this file holds more than {} values", TreeLimits::values),
           "split it");
      stopped_ = true;
    } else if (sign == '{') {
      map(node);
    } else if (sign == '[') {
      list(node);
    } else if (sign == '"') {
      node.kind = Node::Kind::text;
      Located<std::string> words = text();
      node.where = words.where;
      node.text = std::move(words.value);
    } else {
      word(node);
    }
    return node;
  }

  void word(Node& node) {
    const std::size_t end = std::min(text_.find_first_of(after_word, at_), text_.size());
    node.where = span(at_, end);
    const std::string_view word = text_.substr(at_, end - at_);
    if (word != "null") {
      node.kind = Node::Kind::text;
      node.text = word;
    }
    at_ = end;
  }

  Located<std::string> text() {
    const std::size_t begin = ++at_;
    while (text_[at_] != '"') {
      at_ += text_[at_] == '\\' ? 2 : 1;
    }
    const Span where = span(begin, at_);
    Located<std::string> words{without_escapes(text_.substr(begin, at_ - begin)), where};
    ++at_;
    check(words);
    return words;
  }

  // An escape can bring in what the gate has kept out of the text itself.
  void check(const Located<std::string>& words) {
    if (words.value.size() > TreeLimits::text_bytes) {
      fail(words.where,
           fmt::format("this text is longer than {} KiB", TreeLimits::text_bytes >> 10U),
           "shorten it");
    }
    if (const auto offence = first_offence(words.value)) {
      fail(words.where, fmt::format("this text holds {}", offence->what),
           "write it without, and double a backslash that is meant as such");
    }
  }

  void list(Node& node) {
    node.kind = Node::Kind::list;
    node.where = span(at_, at_);
    ++at_;
    while (!stopped_ && more(']')) {
      node.items.push_back(value());
    }
  }

  void map(Node& node) {
    node.kind = Node::Kind::map;
    node.where = span(at_, at_);
    ++at_;
    std::map<std::string, Span, std::less<>> keys;
    while (!stopped_ && more('}')) {
      next();
      Located<std::string> key = text();
      const auto [first, is_new] = keys.emplace(key.value, key.where);
      if (!is_new) {
        diagnostics_.error(key.where, fmt::format("the key `{}` comes a second time", key.value),
                           "keep one of the two", {{first->second, "the first one is here"}});
        ok_ = false;
      }
      next();
      ++at_;  // the colon
      Entry entry{std::move(key), value()};
      if (entry.value.kind == Node::Kind::nothing) {
        entry.value.where = entry.key.where;
      }
      node.entries.push_back(std::move(entry));
    }
  }

  std::string_view text_;
  std::uint32_t source_;
  Diagnostics& diagnostics_;
  std::size_t at_ = 0;
  std::size_t values_ = 0;
  bool ok_ = true;
  bool stopped_ = false;
};

}  // namespace

std::optional<Node> read_json(const Sources& sources, std::uint32_t source,
                              Diagnostics& diagnostics) {
  const std::string_view text = sources.text(source);
  if (!passes_gate(text, source, diagnostics)) {
    return std::nullopt;
  }
  if (const auto fault = json_fault(text, source)) {
    diagnostics.error(fault->where, fault->value);
    return std::nullopt;
  }
  return Walker(text, source, diagnostics).walk();
}

}  // namespace heelrule
