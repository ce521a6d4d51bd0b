#include "engine/recording/draft.hpp"

#include <algorithm>
#include <utility>

#include "engine/reading/make_node.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/written_value.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

// What a record gives once for both sides; nothing where it gives each its own.
const Node* for_both(const Node& value) {
  if (const Node* both = value.find("both")) {
    return both;
  }
  return is_by_sides(value) ? nullptr : &value;
}

const Node* in_head(const Node& record, HeadItem item) {
  const Node* head = record.find("inspection");
  if (head != nullptr && is_of_shoe(item)) {
    head = head->find("shoe");
  }
  return head == nullptr ? nullptr : head->find(key_of(item));
}

}  // namespace

Draft::Draft(const Program& program)
    : program_(program),
      sections_(bench_order(program)),
      fields_(heelrule::fields(program.rules, sections_)),
      places_(fields_.size()),
      before_(fields_.size()),
      amended_(list_node()),
      rules_(program.rules.short_name()) {}

// What a record holds at a place.
Draft::Place Draft::place_in(const Node& record, const Field& field) const {
  const auto holding = [](const Node* answer, bool for_both) {
    return answer == nullptr ? Place{} : Place{*answer, for_both};
  };
  if (field.kind == Field::Kind::head) {
    return holding(in_head(record, field.item), false);
  }
  const Node* values = record.find(is_safety(field) ? "safety" : "found");
  const Node* value =
      values == nullptr ? nullptr : values->find(program_.rules.traits[field.trait].name);
  if (value == nullptr || field.side == Side::none) {
    return holding(value, false);
  }
  const Node* both = for_both(*value);
  return holding(both != nullptr ? both : value->find(in_words(field.side)), both != nullptr);
}

void Draft::take_over(const Node& record) {
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    places_[i] = place_in(record, fields_[i]);
  }
  before_ = places_;
  if (const Node* amended = record.find("amended")) {
    amended_ = *amended;
  }
  const Node* head = record.find("inspection");
  const std::string rules = head == nullptr ? std::string{} : text_at(*head, "rules");
  if (!rules.empty()) {
    rules_ = rules;
  }
}

bool Draft::is_safety(const Field& field) const {
  return field.trait < program_.rules.safety.size();
}

bool Draft::stands(std::size_t field, const Node& answer) const {
  return places_[field].answer && same_content(*places_[field].answer, answer);
}

void Draft::fill(std::size_t field, Node answer) {
  if (stands(field, answer)) {
    return;
  }
  if (places_[field].for_both) {
    const std::size_t other = fields_[field].side == Side::left ? field + 1 : field - 1;
    places_[other].for_both = false;
  }
  places_[field] = {std::move(answer), false};
}

void Draft::fill_both(std::size_t left, Node answer) {
  if (stands(left, answer) && stands(left + 1, answer)) {
    return;
  }
  places_[left + 1] = {answer, true};
  places_[left] = {std::move(answer), true};
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
  const auto& now = places_[field].answer;
  const auto& then = before_[field].answer;
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
    if (fields_[i].kind != Field::Kind::head || answer(i) == nullptr || answer(i)->text.empty()) {
      continue;
    }
    const HeadItem item = fields_[i].item;
    add_entry(is_of_shoe(item) ? map_below(head, "shoe") : head, key_of(item), *answer(i));
  }
  return head;
}

Node Draft::values(bool safety) const {
  Node values = map_node();
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    const Field& field = fields_[i];
    const Place& place = places_[i];
    if (field.kind == Field::Kind::head || !place.answer || is_safety(field) != safety) {
      continue;
    }
    const std::string& name = program_.rules.traits[field.trait].name;
    if (field.side == Side::none || (place.for_both && field.side == Side::left)) {
      add_entry(values, name, *place.answer);
    } else if (!place.for_both) {
      add_entry(map_below(values, name), in_words(field.side), *place.answer);
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
    const bool of_both = places_[i].for_both && before_[i].for_both;
    if (!of_both) {
      all.items.push_back(amendment(key_of(fields_[i], program_.rules), i, amender));
    } else if (fields_[i].side == Side::left) {
      all.items.push_back(amendment(program_.rules.traits[fields_[i].trait].name, i, amender));
    }
  }
  return all;
}

Node Draft::amendment(std::string answer, std::size_t field, const Amender& amender) const {
  const auto& before = before_[field].answer;
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
