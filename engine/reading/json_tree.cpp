#include "engine/reading/json_tree.hpp"

#include <fmt/format.h>
#include <simdjson.h>

#include <algorithm>
#include <map>

#include "engine/reading/json_fault.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

namespace dom = simdjson::dom;

// The parser keeps no places, so the text is walked along with its elements: it is known to be JSON
// by then, and every token is found by passing over blanks and punctuation.
class Walker {
 public:
  Walker(std::string_view text, std::uint32_t source, Diagnostics& diagnostics)
      : text_(text), source_(source), diagnostics_(diagnostics) {}

  std::optional<Node> walk(dom::element root) {
    Node node = element(root, 0);
    return ok_ ? std::optional(std::move(node)) : std::nullopt;
  }

 private:
  void to_next_token() {
    while (at_ < text_.size() &&
           std::string_view(" \t\r\n,:]}").find(text_[at_]) != std::string_view::npos) {
      ++at_;
    }
  }

  Span take_token() {
    to_next_token();
    const std::size_t begin = at_;
    if (text_[at_] == '"') {
      ++at_;
      while (text_[at_] != '"') {
        at_ += text_[at_] == '\\' ? 2 : 1;
      }
      ++at_;
      return span(begin + 1, at_ - 1);
    }
    if (text_[at_] == '{' || text_[at_] == '[') {
      ++at_;
      return span(begin, begin);
    }
    while (at_ < text_.size() &&
           std::string_view(" \t\r\n,:]}").find(text_[at_]) == std::string_view::npos) {
      ++at_;
    }
    return span(begin, at_);
  }

  Span span(std::size_t begin, std::size_t end) const {
    return {source_, static_cast<std::uint32_t>(begin), static_cast<std::uint32_t>(end)};
  }

  void fail(Span where, std::string message, std::string hint) {
    diagnostics_.error(where, std::move(message), std::move(hint));
    ok_ = false;
  }

  // Where going on would pass over tokens that nobody reads.
  void stop(Span where, std::string message, std::string hint) {
    fail(where, std::move(message), std::move(hint));
    stopped_ = true;
  }

  Node element(dom::element value, std::size_t depth) {
    Node node;
    node.where = take_token();
    if (++values_ > TreeLimits::values) {
      stop(node.where, fmt::format("this file holds more than {} values", TreeLimits::values),
           "split it");
      return node;
    }
    const bool holds_more = value.is_object() || value.is_array();
    if (holds_more && depth == TreeLimits::depth) {
      stop(node.where, fmt::format("this is nested more than {} deep", TreeLimits::depth),
           "no rule set or inspection needs that");
      return node;
    }
    switch (value.type()) {
      case dom::element_type::OBJECT:
        node.kind = Node::Kind::map;
        object(value, depth, node);
        break;
      case dom::element_type::ARRAY:
        node.kind = Node::Kind::list;
        array(value, depth, node);
        break;
      case dom::element_type::STRING: {
        std::string_view words;
        node.kind = value.get(words) == simdjson::SUCCESS ? Node::Kind::text : Node::Kind::nothing;
        node.text = words;
        check_text(node.text, node.where);
        break;
      }
      case dom::element_type::NULL_VALUE:
        break;
      default:
        node.kind = Node::Kind::text;
        node.text = text_.substr(node.where.begin, node.where.end - node.where.begin);
        break;
    }
    return node;
  }

  // An escape can bring in what the gate has kept out of the text itself.
  void check_text(std::string_view text, Span where) {
    if (text.size() > TreeLimits::text_bytes) {
      fail(where, fmt::format("this text is longer than {} KiB", TreeLimits::text_bytes >> 10U),
           "shorten it");
    }
    if (const auto offence = first_offence(text)) {
      fail(where, fmt::format("this text holds {}", offence->what),
           "write it without, and double a backslash that is meant as such");
    }
  }

  void array(dom::element value, std::size_t depth, Node& node) {
    dom::array items;
    if (value.get(items) != simdjson::SUCCESS) {
      return;
    }
    for (const dom::element item : items) {
      node.items.push_back(element(item, depth + 1));
      if (stopped_) {
        return;
      }
    }
  }

  void object(dom::element value, std::size_t depth, Node& node) {
    dom::object fields;
    if (value.get(fields) != simdjson::SUCCESS) {
      return;
    }
    std::map<std::string_view, Span> keys;
    for (const dom::key_value_pair field : fields) {
      const Span where = take_token();
      check_text(field.key, where);
      const auto [first, is_new] = keys.emplace(field.key, where);
      if (!is_new) {
        diagnostics_.error(where, fmt::format("the key `{}` comes a second time", field.key),
                           "keep one of the two", {{first->second, "the first one is here"}});
        ok_ = false;
      }
      Entry entry{{std::string(field.key), where}, element(field.value, depth + 1)};
      if (entry.value.kind == Node::Kind::nothing) {
        entry.value.where = where;
      }
      node.entries.push_back(std::move(entry));
      if (stopped_) {
        return;
      }
    }
  }

  std::string_view text_;
  std::uint32_t source_;
  Diagnostics& diagnostics_;
  std::size_t at_ = 0;
  std::size_t values_ = 0;
  bool ok_ = true;
  bool stopped_ = false;
};

}  // namespace

std::optional<Node> read_json(const Sources& sources, std::uint32_t source,
                              Diagnostics& diagnostics) {
  const std::string_view text = sources.text(source);
  if (!passes_gate(text, source, diagnostics)) {
    return std::nullopt;
  }
  dom::parser parser;
  dom::element root;
  const auto error = parser.parse(text.data(), text.size()).get(root);
  if (error != simdjson::SUCCESS) {
    const Located<Problem> fault = json_fault(text, source);
    diagnostics.error(fault.where, fault.value);
    return std::nullopt;
  }
  return Walker(text, source, diagnostics).walk(root);
}

}  // namespace heelrule
