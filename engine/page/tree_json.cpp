#include "engine/page/tree_json.hpp"

namespace heelrule {

void write_tree(JsonWriter& json, const Node& tree) {
  switch (tree.kind) {
    case Node::Kind::nothing:
      json.null();
      return;
    case Node::Kind::text:
      json.text(tree.text);
      return;
    case Node::Kind::list:
      json.begin_array();
      for (const Node& item : tree.items) {
        write_tree(json, item);
      }
      json.end_array();
      return;
    case Node::Kind::map:
      json.begin_object();
      for (const Entry& entry : tree.entries) {
        json.key(entry.key.value);
        write_tree(json, entry.value);
      }
      json.end_object();
      return;
  }
}

}  // namespace heelrule
