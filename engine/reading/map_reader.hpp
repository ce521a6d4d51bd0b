// Taking the keys of a map one by one, and saying what is left over.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/reading/tree.hpp"
#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// The entry of a key of a map, or of one that is probably meant to be it; none if there is
/// neither.
const Entry* probable_entry(const Node& map, std::string_view key);

/// Reads the keys that are known here; `finish` reports all others, each with the nearest known
/// key, and the keys that are missing. Faults are reported and reading goes on, so that one run
/// shows them all; a misspelt key is read as the one that was probably meant, so that one slip is
/// one message.
class MapReader {
 public:
  /// `what` names the map in messages: `a rule`. A node that is no map is reported, and then has no
  /// keys.
  MapReader(const Node& node, Span where, std::string_view what, Diagnostics& diagnostics);

  /// The value of a key, if it is there. Nothing, or a text without a letter, is reported.
  const Node* take(std::string_view key);

  /// The same; reported by `finish` if it is missing.
  const Node* require(std::string_view key, std::string_view sample);

  /// A text of a key; an empty text if there is none. Anything but a text is reported.
  Located<std::string> text(std::string_view key);
  Located<std::string> required_text(std::string_view key, std::string_view sample);

  /// A number of a key; `otherwise` if there is none. What is no number is reported.
  double number(std::string_view key, double otherwise);

  /// `yes` or `no` of a key; no if there is none. Anything else is reported.
  bool yes_or_no(std::string_view key);

  /// A remark in a person's own words, which may be empty.
  std::string remark(std::string_view key);

  /// Whether the key is there, or one that is probably meant to be it.
  bool has(std::string_view key) const;

  /// Where that key stands; the place of the map if it is not there.
  Span where(std::string_view key) const;

  /// Whether nothing is to be said of a key that is not here: this is no map, which has been
  /// reported, or a rule set that could not be read may have it.
  bool excuses_missing() const { return !node_->is_map() || node_->in_part; }
  Span where() const { return where_; }
  Diagnostics& diagnostics() { return diagnostics_; }

  /// Reports the keys that nobody took.
  void finish();

 private:
  struct MissingKey {
    std::string_view key;
    std::string_view sample;
  };

  const Entry* entry(std::string_view key) const { return probable_entry(*node_, key); }
  void know(std::string_view key);

  const Node* node_;
  Span where_;
  std::string_view what_;
  Diagnostics& diagnostics_;
  std::vector<std::string_view> known_;
  std::vector<MissingKey> missing_;
};

/// The text of a node; reported, and empty, if it is something else.
Located<std::string> read_plain_text(const Node& node, std::string_view key,
                                     Diagnostics& diagnostics);

/// Whether `name` is lower-case ASCII: a letter, then letters, digits and `_`. Reported if not.
bool check_name(const Located<std::string>& name, std::string_view what, Diagnostics& diagnostics);

}  // namespace heelrule
