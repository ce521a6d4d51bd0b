#include "engine/reading/make_node.hpp"

#include <utility>

namespace heelrule {

Node text_node(std::string text, Span where) {
  return {Node::Kind::text, where, std::move(text), {}, {}, {}};
}

Node list_node(Span where) { return {Node::Kind::list, where, {}, {}, {}, {}}; }

Node map_node(Span where) { return {Node::Kind::map, where, {}, {}, {}, {}}; }

void add_entry(Node& map, std::string_view key, Node value) {
  const Span where = value.where;
  map.entries.push_back({{std::string(key), where}, std::move(value)});
}

Node& map_below(Node& map, std::string_view key, Span where) {
  if (Node* known = map.find(key)) {
    return *known;
  }
  add_entry(map, key, map_node(where));
  return map.entries.back().value;
}

}  // namespace heelrule
