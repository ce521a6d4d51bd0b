#include "engine/reading/join.hpp"

#include <algorithm>

namespace heelrule {
namespace {

bool overrides(const Node& node, Span where) {
  return std::find(node.overrides.begin(), node.overrides.end(), where) != node.overrides.end();
}

void join_at(Node& base, const Node& other, const std::string& path,
             std::vector<Disagreement>& disagreements) {
  if (base.is_map() && other.is_map()) {
    for (const Entry& entry : other.entries) {
      if (Node* there = base.find(entry.key.value)) {
        join_at(*there, entry.value, path.empty() ? entry.key.value : path + "." + entry.key.value,
                disagreements);
      } else {
        base.entries.push_back(entry);
      }
    }
    return;
  }
  if (base.where == other.where || overrides(base, other.where) || same_content(base, other)) {
    return;
  }
  if (overrides(other, base.where)) {
    base = other;
    return;
  }
  disagreements.push_back({path, base.where, other.where});
}

std::string_view first_part(std::string_view path) { return path.substr(0, path.find('.')); }

std::string_view rest_of(std::string_view path) {
  const std::size_t dot = path.find('.');
  return dot == std::string_view::npos ? std::string_view{} : path.substr(dot + 1);
}

}  // namespace

void join_beside(Node& base, const Node& other, std::vector<Disagreement>& disagreements) {
  join_at(base, other, {}, disagreements);
}

void lay_over(Node& base, const Node& own) {
  if (base.is_map() && own.is_map()) {
    for (const Entry& entry : own.entries) {
      if (Node* there = base.find(entry.key.value)) {
        lay_over(*there, entry.value);
      } else {
        base.entries.push_back(entry);
      }
    }
    return;
  }
  std::vector<Span> replaced = std::move(base.overrides);
  replaced.push_back(base.where);
  base = own;
  base.overrides.insert(base.overrides.end(), replaced.begin(), replaced.end());
}

bool drop(Node& tree, std::string_view path) {
  const std::string_view key = first_part(path);
  const std::string_view rest = rest_of(path);
  if (rest.empty()) {
    return std::erase_if(tree.entries, [&](const Entry& e) { return e.key.value == key; }) > 0;
  }
  Node* inner = tree.find(key);
  return inner != nullptr && drop(*inner, rest);
}

bool decides(const Node& own, std::string_view path) {
  const Node* inner = own.find(first_part(path));
  if (inner == nullptr) {
    return false;
  }
  return rest_of(path).empty() || !inner->is_map() || decides(*inner, rest_of(path));
}

}  // namespace heelrule
