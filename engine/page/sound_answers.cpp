#include "engine/page/sound_answers.hpp"

#include <string_view>
#include <utility>

#include "engine/reading/make_node.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

Node map_of(std::string_view key, Node value) {
  Node map = map_node();
  add_entry(map, key, std::move(value));
  return map;
}

// The first fault of a record that holds one thing; empty if there is none.
Problem fault_in(const Node& record, const RuleSet& rules) {
  Diagnostics diagnostics;
  read_inspection(record, rules, diagnostics);
  return diagnostics.first_error();
}

// The answer as a person gives it who has looked twice.
Node confirmed(const Node& answer) {
  Node same = answer.find("value") != nullptr ? answer : map_of("value", answer);
  add_entry(same, "confirmed", text_node("yes", answer.where));
  return same;
}

class AnswerReader {
 public:
  explicit AnswerReader(const RuleSet& rules) : rules_(rules) {}

  SoundAnswers read(const Node& record) {
    Node sound = record;
    if (Node* head = sound.find("inspection"); head != nullptr && head->is_map()) {
      std::erase_if(head->entries, [&](const Entry& entry) { return is_faulty_head(entry); });
    }
    for (const std::string_view key : {"safety", "found"}) {
      if (Node* values = sound.find(key); values != nullptr && values->is_map()) {
        keep_sound(*values, key);
      }
    }
    Diagnostics diagnostics;
    found_.inspection = read_inspection(sound, rules_, diagnostics);
    return std::move(found_);
  }

 private:
  bool is_faulty_head(const Entry& entry) {
    const Problem fault =
        fault_in(map_of("inspection", map_of(entry.key.value, entry.value)), rules_);
    const bool is_faulty = !fault.message.empty();
    if (is_faulty) {
      found_.faults.push_back({entry.key.value, Side::none, fault.message, fault.hint, false});
    }
    return is_faulty;
  }

  void keep_sound(Node& values, std::string_view key) {
    for (Entry& entry : values.entries) {
      keep_sound_sides(entry, key);
    }
    std::erase_if(values.entries, [](const Entry& entry) {
      return entry.value.kind == Node::Kind::nothing ||
             (entry.value.is_map() && entry.value.entries.empty());
    });
  }

  // Leaves nothing of an entry without a sound side.
  void keep_sound_sides(Entry& entry, std::string_view key) {
    if (!is_by_sides(entry.value)) {
      if (is_faulty(entry.key.value, key, Side::none, entry.value)) {
        entry.value = {};
      }
      return;
    }
    std::erase_if(entry.value.entries, [&](const Entry& side) {
      return is_faulty(entry.key.value, key, side.key.value == "left" ? Side::left : Side::right,
                       side.value);
    });
  }

  bool is_faulty(const std::string& trait, std::string_view key, Side side, const Node& answer) {
    const Problem fault = fault_of(trait, key, side, answer);
    const bool is_faulty = !fault.message.empty();
    if (is_faulty) {
      const bool is_unusual = fault_of(trait, key, side, confirmed(answer)).message.empty();
      found_.faults.push_back({trait, side, fault.message, fault.hint, is_unusual});
    }
    return is_faulty;
  }

  Problem fault_of(const std::string& trait, std::string_view key, Side side,
                   const Node& answer) const {
    Node value = answer;
    if (side != Side::none) {
      value = map_of(in_words(side), std::move(value));
    }
    Node record = map_of(key, map_of(trait, std::move(value)));
    add_entry(record, "inspection", map_node());
    return fault_in(record, rules_);
  }

  const RuleSet& rules_;
  SoundAnswers found_;
};

}  // namespace

SoundAnswers sound_answers(const Node& record, const RuleSet& rules) {
  return AnswerReader(rules).read(record);
}

}  // namespace heelrule
