#include "engine/page/answer_fields.hpp"

#include <string_view>

#include "engine/reading/read_inspection.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

constexpr std::string_view not_seen_words = "not seen";

void take_value(const Node& value, AnswerFields& fields) {
  switch (value.kind) {
    case Node::Kind::nothing:
      return;
    case Node::Kind::text:
      fields.not_seen = value.text == not_seen_words;
      if (!fields.not_seen) {
        fields.texts.push_back(value.text);
      }
      return;
    case Node::Kind::list:
      for (const Node& item : value.items) {
        fields.texts.push_back(item.text);
      }
      return;
    case Node::Kind::map:
      for (const Entry& part : value.entries) {
        fields.fibres.emplace_back(part.key.value, part.value.text);
      }
      return;
  }
}

AnswerFields fields_of(const std::string& name, Side side, const Node& node) {
  AnswerFields fields;
  fields.name = name;
  fields.side = side;
  const Node* const value = node.find("value");
  if (node.find(not_seen_words) != nullptr) {
    fields.not_seen = true;
    fields.reason = text_at(node, not_seen_words);
    fields.note = text_at(node, "note");
  } else if (value != nullptr) {
    take_value(*value, fields);
    fields.note = text_at(node, "note");
    fields.doubt = text_at(node, "doubt");
    fields.confirmed = text_at(node, "confirmed") == "yes";
  } else {
    take_value(node, fields);
  }
  return fields;
}

void add_sides(const Entry& entry, std::vector<AnswerFields>& all) {
  if (!is_by_sides(entry.value)) {
    const Node* const both = entry.value.find("both");
    all.push_back(fields_of(entry.key.value, Side::none, both != nullptr ? *both : entry.value));
    return;
  }
  for (const Side side : both_sides) {
    if (const Node* const value = entry.value.find(in_words(side))) {
      all.push_back(fields_of(entry.key.value, side, *value));
    }
  }
}

}  // namespace

std::vector<AnswerFields> answer_fields(const Node& record, const RuleSet& rules) {
  std::vector<AnswerFields> all;
  for (const std::string_view key : {"safety", "found"}) {
    const Node* const values = record.find(key);
    if (values == nullptr) {
      continue;
    }
    for (const Entry& entry : values->entries) {
      const auto trait = rules.find_trait(entry.key.value);
      if (trait && has_sides(rules.traits[*trait].per)) {
        add_sides(entry, all);
      } else {
        all.push_back(fields_of(entry.key.value, Side::none, entry.value));
      }
    }
  }
  return all;
}

}  // namespace heelrule
