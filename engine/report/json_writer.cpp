#include "engine/report/json_writer.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/quantity/decimal.hpp"
#include "engine/reading/eight_bytes.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

// What breaks lines or pages, and what no file of ours may hold.
bool must_be_escaped(Character c, std::string_view bytes) {
  if (c.code < 0x7F) {
    return c.code < 0x20 || c.code == '<';
  }
  return c.code == 0x2028 || c.code == 0x2029 || first_offence(bytes).has_value();
}

bool is_plain(char byte) {
  return byte >= 0x20 && byte < 0x7F && byte != '"' && byte != '\\' && byte != '<';
}

constexpr std::uint64_t eight_times(unsigned char byte) { return 0x0101010101010101 * byte; }

// Whether all of eight bytes are plain. A byte below 0x80 less a smaller one, or plus so much that
// it stays below 0x100, keeps to its own place; so the highest bit of each place tells of its byte.
bool are_plain(std::uint64_t bytes) {
  const auto any = [&](unsigned char byte) {
    const std::uint64_t difference = bytes ^ eight_times(byte);
    return (difference - eight_times(1)) & ~difference;
  };
  const std::uint64_t below = (bytes - eight_times(0x20)) & ~bytes;
  const std::uint64_t above = bytes | (bytes + eight_times(1));
  return ((below | above | any('"') | any('\\') | any('<')) & eight_times(0x80)) == 0;
}

}  // namespace

// The end is looked at together with some that was seen before: whole eights are the quickest.
bool is_plain_json(std::string_view value) {
  constexpr std::size_t step = sizeof(std::uint64_t);
  if (value.size() < step) {
    return std::all_of(value.begin(), value.end(), is_plain);
  }
  for (std::size_t at = 0; at + step < value.size(); at += step) {
    if (!are_plain(eight_bytes(value.data() + at))) {
      return false;
    }
  }
  return are_plain(eight_bytes(value.data() + value.size() - step));
}

void append_json_text(std::string& text, std::string_view value) {
  text += '"';
  for (std::size_t at = 0; at < value.size();) {
    const std::size_t begin = at;
    while (at < value.size() && is_plain(value[at])) {
      ++at;
    }
    text += value.substr(begin, at - begin);
    if (at == value.size()) {
      break;
    }
    const Character c = first_character(value.substr(at));
    const char byte = value[at];
    if (byte == '"' || byte == '\\') {
      text += '\\';
      text += byte;
    } else if (byte == '\n') {
      text += "\\n";
    } else if (c.bytes == 0) {
      text += "\\ufffd";
    } else if (must_be_escaped(c, value.substr(at, c.bytes))) {
      fmt::format_to(std::back_inserter(text), "\\u{:04x}", static_cast<unsigned>(c.code));
    } else {
      text += value.substr(at, c.bytes);
    }
    at += c.bytes == 0 ? 1 : c.bytes;
  }
  text += '"';
}

void JsonWriter::new_line() {
  if (layout_ == Layout::indented) {
    text_ += '\n';
    text_.append(has_content_.size() * 2, ' ');
  }
}

void JsonWriter::before_value() {
  if (after_key_) {
    after_key_ = false;
    return;
  }
  if (has_content_.empty()) {
    return;
  }
  if (has_content_.back()) {
    text_ += ',';
  }
  has_content_.back() = true;
  new_line();
}

void JsonWriter::open(char bracket) {
  before_value();
  text_ += bracket;
  has_content_.push_back(false);
}

void JsonWriter::close(char bracket) {
  const bool content = has_content_.back();
  has_content_.pop_back();
  if (content) {
    new_line();
  }
  text_ += bracket;
}

JsonWriter& JsonWriter::begin_object() {
  open('{');
  return *this;
}

JsonWriter& JsonWriter::end_object() {
  close('}');
  return *this;
}

JsonWriter& JsonWriter::begin_array() {
  open('[');
  return *this;
}

JsonWriter& JsonWriter::end_array() {
  close(']');
  return *this;
}

JsonWriter& JsonWriter::key(std::string_view name) {
  before_value();
  append_json_text(text_, name);
  text_ += layout_ == Layout::indented ? ": " : ":";
  after_key_ = true;
  return *this;
}

JsonWriter& JsonWriter::text(std::string_view value) {
  before_value();
  append_json_text(text_, value);
  return *this;
}

JsonWriter& JsonWriter::number(double value) {
  before_value();
  text_ += shortest(value);
  return *this;
}

JsonWriter& JsonWriter::truth(bool value) {
  before_value();
  text_ += value ? "true" : "false";
  return *this;
}

JsonWriter& JsonWriter::null() {
  before_value();
  text_ += "null";
  return *this;
}

JsonWriter& JsonWriter::texts(std::string_view name, const std::vector<std::string>& all) {
  key(name).begin_array();
  for (const std::string& one : all) {
    text(one);
  }
  return end_array();
}

std::string json_text(std::string_view value) {
  std::string text;
  append_json_text(text, value);
  return text;
}

}  // namespace heelrule
