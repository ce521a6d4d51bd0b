#include "engine/recording/draft.hpp"

#include <algorithm>
#include <utility>

#include "engine/reading/make_node.hpp"
#include "engine/reading/written_value.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

// What a record gives once for both sides; nothing where it gives each its own.
const Node* for_both(const Node& value) {
  if (const Node* both = value.find("both")) {
    return both;
  }
  return value.find("left") == nullptr && value.find("right") == nullptr ? &value : nullptr;
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
      for_both_(fields_.size()),
      before_(fields_.size()),
      was_for_both_(fields_.size()),
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
      found = value;
      if (value != nullptr && field.side != Side::none) {
        found = for_both(*value);
        for_both_[i] = found != nullptr;
        found = found != nullptr ? found : value->find(in_words(field.side));
      }
    }
    if (found != nullptr) {
      answers_[i] = *found;
    }
  }
  before_ = answers_;
  was_for_both_ = for_both_;
  if (const Node* amended = record.find("amended")) {
    amended_ = *amended;
  }
  const Node* head = record.find("inspection");
  const Node* rules = head == nullptr ? nullptr : head->find("rules");
  if (rules != nullptr && !rules->text.empty()) {
    rules_ = rules->text;
  }
}

void Draft::fill(std::size_t field, Node answer) {
  if (answers_[field] && same_content(*answers_[field], answer)) {
    return;
  }
  answers_[field] = std::move(answer);
  if (for_both_[field]) {
    const std::size_t other = fields_[field].side == Side::left ? field + 1 : field - 1;
    for_both_[field] = for_both_[other] = false;
  }
}

void Draft::fill_both(std::size_t left, Node answer) {
  const auto stands = [&](std::size_t field) {
    return answers_[field] && same_content(*answers_[field], answer);
  };
  if (stands(left) && stands(left + 1)) {
    return;
  }
  for_both_[left] = for_both_[left + 1] = true;
  answers_[left + 1] = answer;
  answers_[left] = std::move(answer);
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
    if (field.side == Side::none || (for_both_[i] && field.side == Side::left)) {
      add_entry(values, name, *answers_[i]);
    } else if (!for_both_[i]) {
      add_entry(map_below(values, name), in_words(field.side), *answers_[i]);
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
    // One reading of both sides that gave way to another is one amendment.
    const bool of_both = for_both_[i] && was_for_both_[i];
    if (!of_both) {
      all.items.push_back(amendment(key_of(fields_[i], program_.rules), i, amender));
    } else if (fields_[i].side == Side::left) {
      all.items.push_back(amendment(program_.rules.traits[fields_[i].trait].name, i, amender));
    }
  }
  return all;
}

Node Draft::amendment(std::string answer, std::size_t field, const Amender& amender) const {
  const auto& before = before_[field];
  Node one = map_node();
  add_entry(one, "answer", text_node(std::move(answer)));
  add_entry(one, "was", text_node(before ? written_words(*before) : "open"));
  add_entry(one, "when", text_node(amender.when));
  add_entry(one, "by", text_node(amender.by));
  if (!amender.because.empty()) {
    add_entry(one, "because", text_node(amender.because));
  }
  return one;
}

}  // namespace heelrule
