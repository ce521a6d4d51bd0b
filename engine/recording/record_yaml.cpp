#include "engine/recording/record_yaml.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/report/yaml_text.hpp"

namespace heelrule {
namespace {

constexpr std::string_view plain_signs = "abcdefghijklmnopqrstuvwxyz0123456789_";

// A name of ours as it is; the name of a fibre, and what YAML may take for something else, in
// quotes.
std::string key_text(std::string_view key) {
  const bool plain = !key.empty() && key.find_first_not_of(plain_signs) == std::string_view::npos &&
                     key.front() >= 'a' && key != "y" && key != "n" && key != "yes" &&
                     key != "no" && key != "on" && key != "off" && key != "true" &&
                     key != "false" && key != "null";
  return plain ? std::string(key) : yaml_text(key);
}

std::string in_one_line(const Node& node) {
  std::string text;
  switch (node.kind) {
    case Node::Kind::nothing:
      return "\"\"";
    case Node::Kind::text:
      return yaml_text(node.text);
    case Node::Kind::list:
      for (const Node& item : node.items) {
        text += (text.empty() ? "" : ", ") + in_one_line(item);
      }
      return "[" + text + "]";
    case Node::Kind::map:
      for (const Entry& entry : node.entries) {
        text += fmt::format("{}{}: {}", text.empty() ? "" : ", ", key_text(entry.key.value),
                            in_one_line(entry.value));
      }
      return "{" + text + "}";
  }
  return text;
}

}  // namespace

std::string record_yaml(const Node& record) {
  std::string text;
  for (const Entry& part : record.entries) {
    text += fmt::format("{}{}:", text.empty() ? "" : "\n", key_text(part.key.value));
    if (part.value.is_map() && !part.value.entries.empty()) {
      text += '\n';
      for (const Entry& entry : part.value.entries) {
        text += fmt::format("  {}: {}\n", key_text(entry.key.value), in_one_line(entry.value));
      }
    } else if (part.value.is_list() && !part.value.items.empty()) {
      text += '\n';
      for (const Node& item : part.value.items) {
        text += fmt::format("  - {}\n", in_one_line(item));
      }
    } else {
      text += fmt::format(" {}\n", in_one_line(part.value));
    }
  }
  return text;
}

}  // namespace heelrule
