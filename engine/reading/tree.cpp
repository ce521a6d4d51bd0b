#include "engine/reading/tree.hpp"

#include <algorithm>

namespace heelrule {

const Node* Node::find(std::string_view key) const {
  const auto at = std::find_if(entries.begin(), entries.end(),
                               [&](const Entry& entry) { return entry.key.value == key; });
  return at == entries.end() ? nullptr : &at->value;
}

Node* Node::find(std::string_view key) {
  const auto at = std::find_if(entries.begin(), entries.end(),
                               [&](const Entry& entry) { return entry.key.value == key; });
  return at == entries.end() ? nullptr : &at->value;
}

std::string text_at(const Node& map, std::string_view key) {
  const Node* found = map.find(key);
  return found == nullptr ? std::string{} : found->text;
}

std::string_view in_words(Node::Kind kind) {
  switch (kind) {
    case Node::Kind::nothing:
      return "nothing";
    case Node::Kind::text:
      return "a text";
    case Node::Kind::list:
      return "a list";
    case Node::Kind::map:
      return "a map";
  }
  return "";
}

bool same_content(const Node& a, const Node& b) {
  if (a.kind != b.kind || a.text != b.text) {
    return false;
  }
  return std::equal(a.items.begin(), a.items.end(), b.items.begin(), b.items.end(), same_content) &&
         std::equal(a.entries.begin(), a.entries.end(), b.entries.begin(), b.entries.end(),
                    [](const Entry& x, const Entry& y) {
                      return x.key.value == y.key.value && same_content(x.value, y.value);
                    });
}

}  // namespace heelrule
