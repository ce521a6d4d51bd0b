#include "engine/reading/written_value.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "engine/quantity/trimmed.hpp"
#include "engine/reading/make_node.hpp"

namespace heelrule {
namespace {

constexpr std::string_view digits = "0123456789";

std::vector<std::string_view> parts_of(std::string_view line, std::string_view separator) {
  std::vector<std::string_view> parts;
  while (true) {
    const std::size_t end = line.find(separator);
    parts.push_back(trimmed(line.substr(0, end)));
    if (end == std::string_view::npos) {
      return parts;
    }
    line.remove_prefix(end + separator.size());
  }
}

// `cotton 80 %`, or `80 % cotton` as many labels have it.
void add_fibre(Node& map, std::string_view part, Span where) {
  std::size_t share = std::min(part.find_first_of(digits), part.size());
  std::string_view fibre = part.substr(0, share);
  std::string_view much = part.substr(share);
  const std::size_t sign = part.find('%');
  if (share == 0 && sign != std::string_view::npos) {
    much = part.substr(0, sign + 1);
    fibre = part.substr(sign + 1);
  }
  add_entry(map, trimmed(fibre), text_node(std::string(trimmed(much)), where));
}

std::string joined(const Node& list) {
  std::string words;
  for (const Node& item : list.items) {
    words += (words.empty() ? "" : ", ") + item.text;
  }
  return words;
}

// The map of a fibre content, or of sides.
std::string pairs(const Node& map) {
  std::string words;
  for (const Entry& entry : map.entries) {
    words += fmt::format("{}{} {}", words.empty() ? "" : ", ", entry.key.value,
                         written_words(entry.value));
  }
  return words;
}

std::string with_remarks(const Node& map, std::string words, std::string_view but) {
  std::string remarks;
  for (const Entry& entry : map.entries) {
    if (entry.key.value != but) {
      remarks += fmt::format("{}{}: {}", remarks.empty() ? "" : "; ", entry.key.value,
                             written_words(entry.value));
    }
  }
  return remarks.empty() ? words : fmt::format("{} ({})", words, remarks);
}

}  // namespace

Node written_value(const Trait& trait, std::string_view line, std::string_view separator,
                   Span where) {
  if (line == "not seen") {
    return text_node(std::string(line), where);
  }
  if (std::holds_alternative<FibresKind>(trait.kind)) {
    Node map = map_node(where);
    for (const std::string_view part : parts_of(line, separator)) {
      add_fibre(map, part, where);
    }
    return map;
  }
  if (std::holds_alternative<MeasureKind>(trait.kind) &&
      line.find(separator) != std::string_view::npos) {
    Node list = list_node(where);
    for (const std::string_view part : parts_of(line, separator)) {
      list.items.push_back(text_node(std::string(part), where));
    }
    return list;
  }
  return text_node(std::string(line), where);
}

std::string written_words(const Node& value) {
  switch (value.kind) {
    case Node::Kind::nothing:
      return "nothing";
    case Node::Kind::text:
      return value.text;
    case Node::Kind::list:
      return joined(value);
    case Node::Kind::map:
      break;
  }
  if (const Node* reason = value.find("not seen")) {
    const std::string words = reason->text.empty() ? "not seen" : "not seen: " + reason->text;
    return with_remarks(value, words, "not seen");
  }
  const Node* inner = value.find("value");
  return inner == nullptr ? pairs(value) : with_remarks(value, written_words(*inner), "value");
}

}  // namespace heelrule
