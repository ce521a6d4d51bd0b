#include "engine/recording/draft.hpp"

#include <algorithm>
#include <utility>

#include "engine/reading/make_node.hpp"
#include "engine/reading/written_value.hpp"

namespace heelrule {
namespace {

// What a record has at one side; nothing where it says nothing of it.
const Node* of_side(const Node& value, Side side) {
  const Node* left = value.find("left");
  const Node* right = value.find("right");
  const Node* both = value.find("both");
  if (left == nullptr && right == nullptr && both == nullptr) {
    return &value;
  }
  return both != nullptr ? both : side == Side::left ? left : right;
}

const Node* in_head(const Node& record, HeadItem item) {
  const Node* head = record.find("inspection");
  if (head != nullptr && (item == HeadItem::shoe_label || item == HeadItem::shoe_marked)) {
    head = head->find("shoe");
  }
  return head == nullptr ? nullptr : head->find(key_of(item));
}

}  // namespace

Draft::Draft(const Program& program)
    : program_(program),
      sections_(bench_order(program)),
      fields_(heelrule::fields(program.rules, sections_)),
      answers_(fields_.size()),
      before_(fields_.size()),
      amended_(list_node()),
      rules_(program.rules.short_name()) {}

void Draft::take_over(const Node& record) {
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    const Field& field = fields_[i];
    const Node* found = nullptr;
    if (field.kind == Field::Kind::head) {
      found = in_head(record, field.item);
    } else {
      const bool safety = field.trait < program_.rules.safety.size();
      const Node* values = record.find(safety ? "safety" : "found");
      const Node* value =
          values == nullptr ? nullptr : values->find(program_.rules.traits[field.trait].name);
      found = value == nullptr || field.side == Side::none ? value : of_side(*value, field.side);
    }
    if (found != nullptr) {
      answers_[i] = *found;
    }
  }
  before_ = answers_;
  if (const Node* amended = record.find("amended")) {
    amended_ = *amended;
  }
  const Node* head = record.find("inspection");
  const Node* rules = head == nullptr ? nullptr : head->find("rules");
  if (rules != nullptr && !rules->text.empty()) {
    rules_ = rules->text;
  }
}

std::optional<std::size_t> Draft::find(std::string_view key) const {
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    if (key_of(fields_[i], program_.rules) == key) {
      return i;
    }
  }
  return std::nullopt;
}

bool Draft::differs(std::size_t field) const {
  const auto& now = answers_[field];
  const auto& then = before_[field];
  return now.has_value() != then.has_value() || (now && !same_content(*now, *then));
}

bool Draft::is_changed() const {
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    if (differs(i)) {
      return true;
    }
  }
  return false;
}

Node Draft::record(const std::optional<Amender>& amender) const {
  Node record = map_node();
  add_entry(record, "inspection", head());
  add_entry(record, "safety", values(true));
  add_entry(record, "found", values(false));
  std::erase_if(record.entries, [](const Entry& entry) { return entry.value.entries.empty(); });
  Node amended = amender ? amendments(*amender) : amended_;
  if (!amended.items.empty()) {
    add_entry(record, "amended", std::move(amended));
  }
  return record;
}

Node Draft::head() const {
  Node head = map_node();
  add_entry(head, "rules", text_node(rules_));
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    if (fields_[i].kind != Field::Kind::head || !answers_[i] || answers_[i]->text.empty()) {
      continue;
    }
    const HeadItem item = fields_[i].item;
    const bool of_shoe = item == HeadItem::shoe_label || item == HeadItem::shoe_marked;
    add_entry(of_shoe ? map_below(head, "shoe") : head, key_of(item), *answers_[i]);
  }
  return head;
}

Node Draft::values(bool safety) const {
  Node values = map_node();
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    const Field& field = fields_[i];
    if (field.kind == Field::Kind::head || !answers_[i] ||
        (field.trait < program_.rules.safety.size()) != safety) {
      continue;
    }
    const std::string& name = program_.rules.traits[field.trait].name;
    if (field.side == Side::none) {
      add_entry(values, name, *answers_[i]);
    } else {
      add_entry(map_below(values, name), field.side == Side::left ? "left" : "right", *answers_[i]);
    }
  }
  return values;
}

Node Draft::amendments(const Amender& amender) const {
  Node all = amended_;
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    if (!differs(i)) {
      continue;
    }
    Node one = map_node();
    add_entry(one, "answer", text_node(key_of(fields_[i], program_.rules)));
    add_entry(one, "was", text_node(before_[i] ? written_words(*before_[i]) : "open"));
    add_entry(one, "when", text_node(amender.when));
    add_entry(one, "by", text_node(amender.by));
    if (!amender.because.empty()) {
      add_entry(one, "because", text_node(amender.because));
    }
    all.items.push_back(std::move(one));
  }
  return all;
}

}  // namespace heelrule
