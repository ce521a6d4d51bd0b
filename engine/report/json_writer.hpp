// JSON (RFC 8259), written piece by piece.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace heelrule {

/// Writes one JSON document. Keys and values in the order of the calls; two blanks of indent a
/// level, or none and one line for `compact`. What would break a line or a page that embeds the
/// document is escaped: control characters,
/// `<`, U+2028 and U+2029.
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

/// `value` as a JSON string, quotes included.
std::string json_text(std::string_view value);

}  // namespace heelrule
