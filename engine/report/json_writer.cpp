#include "engine/report/json_writer.hpp"

#include <fmt/format.h>

#include "engine/quantity/decimal.hpp"
#include "engine/report/plain_json.hpp"
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

}  // namespace

void append_json_text(std::string& text, std::string_view value) {
  text += '"';
  for (std::size_t at = 0; at < value.size();) {
    const std::size_t begin = at;
    while (at < value.size() && is_plain_json(value[at])) {
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
