// JSON (RFC 8259), written piece by piece.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace heelrule {

/// Writes one JSON document. Keys and values in the order of the calls; two blanks of indent a
/// level, or none and one line for `compact`. What would break a line or a page that embeds the
/// document is escaped: control characters, those of text direction, `<`, U+2028 and
/// U+2029. A byte that is not UTF-8 becomes U+FFFD.
class JsonWriter {
 public:
  enum class Layout : std::uint8_t { indented, compact };

  explicit JsonWriter(Layout layout = Layout::indented) : layout_(layout) {}

  JsonWriter& begin_object();
  JsonWriter& end_object();
  JsonWriter& begin_array();
  JsonWriter& end_array();
  JsonWriter& key(std::string_view name);

  JsonWriter& text(std::string_view value);
  /// The shortest number that reads back the same. Precondition: finite.
  JsonWriter& number(double value);
  JsonWriter& truth(bool value);
  JsonWriter& null();

  /// A key and its value.
  JsonWriter& text(std::string_view name, std::string_view value) { return key(name).text(value); }
  JsonWriter& number(std::string_view name, double value) { return key(name).number(value); }
  JsonWriter& truth(std::string_view name, bool value) { return key(name).truth(value); }

  /// A key with a number, or with `null` where it is not known.
  JsonWriter& number_or_null(std::string_view name, double value, bool known) {
    return known ? number(name, value) : key(name).null();
  }

  /// A key with a list of texts.
  JsonWriter& texts(std::string_view name, const std::vector<std::string>& all);

  /// The document so far.
  std::string take() { return std::move(text_); }

 private:
  void before_value();
  void open(char bracket);
  void close(char bracket);
  void new_line();

  Layout layout_;
  std::string text_;
  std::vector<bool> has_content_;
  bool after_key_ = false;
};

/// Appends `value` as a JSON string, quotes included.
void append_json_text(std::string& text, std::string_view value);

/// `value` as a JSON string, quotes included.
std::string json_text(std::string_view value);

}  // namespace heelrule
