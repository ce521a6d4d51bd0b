// A file as texts, lists and maps, each with its place: what YAML and JSON have in common.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/source/span.hpp"

namespace heelrule {

struct Entry;

/// A piece of a file. Nothing is guessed from how a text looks: `yes`, `010` and `.nan` are texts
/// until whoever expects something there reads them.
struct Node {
  enum class Kind : std::uint8_t { nothing, text, list, map };

  Kind kind = Kind::nothing;
  Span where;
  std::string text;            ///< of a text
  std::vector<Node> items;     ///< of a list
  std::vector<Entry> entries;  ///< of a map, in the order written; each key once
  std::vector<Span>
      overrides;         ///< the places of what this piece replaced in the rule sets it builds on
  bool in_part = false;  ///< of a map: a rule set that could not be read may have more keys for it

  bool is_text() const { return kind == Kind::text; }
  bool is_list() const { return kind == Kind::list; }
  bool is_map() const { return kind == Kind::map; }

  /// The value of a key of a map; none if there is no such key or this is no map.
  const Node* find(std::string_view key) const;
  Node* find(std::string_view key);
};

/// The text below a key of a map; empty if there is no such key, or no text below it.
///
///     text_at({client: C-014}, "client")  ->  "C-014"
std::string text_at(const Node& map, std::string_view key);

struct Entry {
  Located<std::string> key;
  Node value;
};

/// What a piece is, for messages: `a text`, `a list`, `a map`, `nothing`.
std::string_view in_words(Node::Kind kind);

/// Whether two pieces say the same, wherever they stand.
bool same_content(const Node& a, const Node& b);

/// How much one file may hold. Beyond that it is refused before it can exhaust memory or the stack.
struct TreeLimits {
  static constexpr std::size_t bytes = std::size_t{4} << 20U;
  static constexpr std::size_t depth = 64;
  static constexpr std::size_t values = 200'000;
  static constexpr std::size_t text_bytes = std::size_t{64} << 10U;
};

}  // namespace heelrule
