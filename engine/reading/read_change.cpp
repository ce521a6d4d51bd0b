#include "engine/reading/read_change.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/model/inspection.hpp"
#include "engine/reading/map_reader.hpp"
#include "engine/reading/read_text.hpp"
#include "engine/reading/read_value.hpp"
#include "engine/reading/trait_map.hpp"

namespace heelrule {
namespace {

bool is_plain(const TraitKind& kind) {
  return std::holds_alternative<MeasureKind>(kind) || std::holds_alternative<AnswerKind>(kind) ||
         !levels_of(kind).empty();
}

class ChangeReader {
 public:
  ChangeReader(const Located<std::string>& name, const Node& node, const RuleSet& rules,
               Diagnostics& diagnostics)
      : map_(node, name.where, "a change", diagnostics), rules_(rules), diagnostics_(diagnostics) {
    check_name(name, "change", diagnostics);
    change_.name = name.value;
    change_.where = name.where;
  }

  Change read() {
    change_.title = require_text(map_, "title", "Put in a new insole.");
    if (map_.has("applies")) {
      change_.applies = map_.text("applies");
    }
    const bool moves = map_.has("sets") || map_.has("adds");
    each_trait("sets", [&](std::size_t trait, const Entry& entry) { set(trait, entry); });
    each_trait("adds", [&](std::size_t trait, const Entry& entry) { add(trait, entry); });
    if (!moves && !map_.excuses_missing()) {
      diagnostics_.error(map_.where(), "this change moves no trait",
                         "add `sets: {insole_state: springy}` or `adds: {insole_length: 5 mm}`");
    }
    change_.source = require_text(map_, "source", "common practice");
    map_.finish();
    return std::move(change_);
  }

 private:
  template <class Function>
  void each_trait(std::string_view key, Function function) {
    const Node* node = take_trait_map(map_, key, "write it as in `{insole_state: springy}`");
    if (node == nullptr) {
      return;
    }
    for (const Entry& entry : node->entries) {
      if (const auto trait = trait_of(entry.key)) {
        function(*trait, entry);
      }
    }
  }

  // A trait that a change can move. One that could not be read has been reported.
  std::optional<std::size_t> trait_of(const Located<std::string>& name) {
    const auto trait =
        named_trait(rules_, name, "name a trait that the rule set asks for", diagnostics_);
    if (!trait) {
      return std::nullopt;
    }
    const TraitKind& kind = rules_.traits[*trait].kind;
    if (std::holds_alternative<UnreadKind>(kind)) {
      return std::nullopt;
    }
    if (!is_plain(kind) || *trait < rules_.safety.size()) {
      diagnostics_.error(name.where, fmt::format("a change cannot move `{}`", name.value),
                         "name a measure, scale, choice or yes/no that is recorded");
      return std::nullopt;
    }
    const bool again = std::any_of(change_.moves.begin(), change_.moves.end(),
                                   [&](const MovedTrait& moved) { return moved.trait == *trait; });
    if (again) {
      diagnostics_.error(name.where, fmt::format("this change moves `{}` twice", name.value),
                         "keep one of the two");
      return std::nullopt;
    }
    return trait;
  }

  void set(std::size_t trait, const Entry& entry) {
    const auto read = read_value(rules_.traits[trait], entry.value, entry.key.where, diagnostics_);
    if (!read) {
      return;
    }
    if (std::holds_alternative<NotSeen>(read->value)) {
      diagnostics_.error(entry.value.where, "a change leads to something that can be seen",
                         "write the value that the trait will have");
      return;
    }
    change_.moves.push_back({trait, false, plain_number(read->value)});
  }

  void add(std::size_t trait, const Entry& entry) {
    const auto* measure = std::get_if<MeasureKind>(&rules_.traits[trait].kind);
    if (measure == nullptr) {
      diagnostics_.error(
          entry.key.where,
          fmt::format("nothing can be added to `{}`, which is no measure", entry.key.value),
          "say under `sets` what it becomes");
      return;
    }
    const Located<std::string> text = read_plain_text(entry.value, entry.key.value, diagnostics_);
    if (!entry.value.is_text()) {
      return;
    }
    if (const auto amount = parse_quantity_in(text.value, measure->unit)) {
      change_.moves.push_back({trait, true, amount->stored});
    } else {
      diagnostics_.error(text.where, amount.problem());
    }
  }

  MapReader map_;
  const RuleSet& rules_;
  Diagnostics& diagnostics_;
  Change change_;
};

}  // namespace

Change read_change(const Located<std::string>& name, const Node& node, const RuleSet& rules,
                   Diagnostics& diagnostics) {
  return ChangeReader(name, node, rules, diagnostics).read();
}

}  // namespace heelrule
