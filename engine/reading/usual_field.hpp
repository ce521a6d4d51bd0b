// How most programs write a trait with its value as JSON: its bytes, but for the value itself.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "engine/reading/json_scanner.hpp"

namespace heelrule {

/// Where blanks stand: nowhere, or behind colons and commas.
enum class Spacing : std::uint8_t { none, usual };

/// A trait whose value is one plain text, or one for each side:
///
///     "shoe_mass":"311 g"
///     "foot_width":{"left":"92 mm","right":"93 mm"}
///
/// Comparing whole stretches of bytes takes a fraction of the time of taking them token by token,
/// and comes to the same.
class UsualField {
 public:
  UsualField(std::string_view trait, bool has_sides, Spacing spacing);

  bool has_sides() const { return !between_.empty(); }

  /// Takes the field. `left` is the only text of a trait without sides. False where it is another
  /// field, or written in another way; the scanner may stand anywhere then.
  bool take(JsonScanner& scanner, std::string_view& left, std::string_view& right) const {
    if (!scanner.take_bytes(before_) || !scanner.rest_of_text(left)) {
      return false;
    }
    return !has_sides() ||
           (scanner.take_bytes(between_) && scanner.rest_of_text(right) && scanner.take_bytes("}"));
  }

 private:
  std::string before_;   // up to the first byte of the first text
  std::string between_;  // from the end of one text to the first byte of the other
};

}  // namespace heelrule
