#include "engine/reading/read_inspection.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/quantity/calendar_date.hpp"
#include "engine/quantity/nearest.hpp"
#include "engine/reading/map_reader.hpp"
#include "engine/reading/read_document.hpp"
#include "engine/reading/read_value.hpp"
#include "engine/reading/trait_map.hpp"

namespace heelrule {
namespace {

class InspectionReader {
 public:
  InspectionReader(const Node& tree, const RuleSet& rules, Diagnostics& diagnostics)
      : tree_(tree), rules_(rules), diagnostics_(diagnostics) {}

  Inspection read() {
    MapReader map(tree_, {tree_.where.source, tree_.where.begin, tree_.where.begin}, "a record",
                  diagnostics_);
    if (const Node* head =
            map.require("inspection", "{rules: …, date: …, observer: …, client: …}")) {
      read_head(*head);
    }
    read_values(map, "safety", true);
    read_values(map, "found", false);
    read_amendments(map);
    map.finish();
    auto& seen = inspection_.observations;
    std::sort(seen.begin(), seen.end(), [](const Observation& a, const Observation& b) {
      return std::pair(a.trait, a.side) < std::pair(b.trait, b.side);
    });
    return std::move(inspection_);
  }

 private:
  void read_head(const Node& node) {
    MapReader map(node, node.where, "an inspection", diagnostics_);
    inspection_.rules = map.remark("rules");
    inspection_.date = map.remark("date");
    if (!inspection_.date.empty() && !is_date(inspection_.date)) {
      diagnostics_.error(map.take("date")->where, fmt::format("`{}` is no date", inspection_.date),
                         "write year, month and day: `2026-10-03`");
    }
    inspection_.observer = map.remark("observer");
    inspection_.client = map.remark("client");
    inspection_.note = map.remark("note");
    if (const Node* shoe = map.take("shoe")) {
      MapReader inner(*shoe, shoe->where, "a shoe", diagnostics_);
      inspection_.shoe_label = inner.remark("label");
      inspection_.shoe_marked = inner.remark("marked");
      inner.finish();
    }
    map.finish();
  }

  void read_amendments(MapReader& map) {
    const Node* list = map.take("amended");
    if (list == nullptr) {
      return;
    }
    if (!list->is_list()) {
      diagnostics_.error(list->where,
                         fmt::format("`amended` is a list, and this is {}", in_words(list->kind)),
                         "write each amendment as `- {answer: …, was: …, when: …, by: …}`");
      return;
    }
    for (const Node& item : list->items) {
      MapReader one(item, item.where, "an amendment", diagnostics_);
      Amendment read;
      read.answer = one.required_text("answer", "foot_length.left").value;
      read.was = one.required_text("was", "243 mm").value;
      read.when = one.required_text("when", "2026-10-03T10:12Z").value;
      read.by = one.required_text("by", "A-02").value;
      read.because = one.remark("because");
      one.finish();
      inspection_.amendments.push_back(std::move(read));
    }
  }

  void read_values(MapReader& map, std::string_view key, bool safety) {
    const Node* node = take_trait_map(map, key, "write each trait on a line of its own, indented");
    if (node == nullptr) {
      return;
    }
    for (const Entry& entry : node->entries) {
      read_entry(entry, safety);
    }
  }

  bool is_safety(std::size_t trait) const { return trait < rules_.safety.size(); }

  void read_entry(const Entry& entry, bool safety) {
    const auto index = rules_.find_trait(entry.key.value);
    if (!index) {
      unknown(entry.key, safety);
      return;
    }
    if (is_safety(*index) != safety) {
      diagnostics_.error(
          entry.key.where,
          fmt::format("`{}` is {} safety question", entry.key.value, safety ? "no" : "a"),
          safety ? "record it under `found`" : "record it under `safety`");
      return;
    }
    const Trait& trait = rules_.traits[*index];
    if (std::holds_alternative<DerivedKind>(trait.kind)) {
      diagnostics_.error(entry.key.where,
                         fmt::format("`{}` is worked out, not recorded", trait.name),
                         "leave it out, and record what it is worked out from");
      return;
    }
    if (has_sides(trait.per)) {
      read_sides(*index, entry);
    } else if (const Located<std::string>* side = side_in(entry.value)) {
      diagnostics_.error(side->where, fmt::format("`{}` has no sides", trait.name),
                         "record one value");
    } else {
      add(*index, Side::none, entry.value, entry.key.where);
    }
  }

  // The first key of a value that is a side, or is probably meant to be one.
  static const Located<std::string>* side_in(const Node& value) {
    for (const Entry& entry : value.entries) {
      Nearest nearest(entry.key.value);
      for (const std::string_view side : {"left", "right", "both"}) {
        nearest.offer(side);
      }
      if (nearest.found()) {
        return &entry.key;
      }
    }
    return nullptr;
  }

  void unknown(const Located<std::string>& name, bool safety) {
    Nearest nearest(name.value);
    for (std::size_t i = 0; i < rules_.traits.size(); ++i) {
      if (is_safety(i) == safety && !std::holds_alternative<DerivedKind>(rules_.traits[i].kind)) {
        nearest.offer(rules_.traits[i].name);
      }
    }
    diagnostics_.error(name.where,
                       fmt::format("`{}` asks for no {} `{}`", rules_.name,
                                   safety ? "safety question" : "trait", name.value),
                       nearest.found()
                           ? nearest.question()
                           : "record what the rule set asks for, or grade against another one");
  }

  void read_sides(std::size_t trait, const Entry& entry) {
    if (side_in(entry.value) == nullptr) {
      add_both(trait, entry.value, entry.key.where);
      return;
    }
    MapReader map(entry.value, entry.key.where, "a value by sides", diagnostics_);
    if (const Node* both = map.take("both")) {
      add_both(trait, *both, entry.key.where);
      if (map.has("left") || map.has("right")) {
        diagnostics_.error(both->where, "`both` leaves nothing for `left` and `right` to say",
                           "keep `both`, or write `left` and `right`");
      }
      map.take("left");
      map.take("right");
    } else {
      if (const Node* left = map.take("left")) {
        add(trait, Side::left, *left, entry.key.where);
      }
      if (const Node* right = map.take("right")) {
        add(trait, Side::right, *right, entry.key.where);
      }
    }
    map.finish();
  }

  void add(std::size_t trait, Side side, const Node& node, Span key) {
    if (auto value = read_value(rules_.traits[trait], node, key, diagnostics_)) {
      inspection_.observations.push_back(
          {trait, side, std::move(value->value), std::move(value->note), node.where});
    }
  }

  void add_both(std::size_t trait, const Node& node, Span key) {
    if (auto value = read_value(rules_.traits[trait], node, key, diagnostics_)) {
      for (const Side side : {Side::left, Side::right}) {
        inspection_.observations.push_back({trait, side, value->value, value->note, node.where});
      }
    }
  }

  const Node& tree_;
  const RuleSet& rules_;
  Diagnostics& diagnostics_;
  Inspection inspection_;
};

}  // namespace

bool is_by_sides(const Node& value) {
  return value.find("left") != nullptr || value.find("right") != nullptr;
}

bool is_date(std::string_view text) { return find_date(text).has_value(); }

Inspection read_inspection(const Node& tree, const RuleSet& rules, Diagnostics& diagnostics) {
  return InspectionReader(tree, rules, diagnostics).read();
}

Checked<Inspection> load_inspection(const Sources& sources, std::uint32_t source,
                                    const RuleSet& rules) {
  Diagnostics diagnostics;
  const auto tree = read_document(sources, source, diagnostics);
  if (!tree) {
    return Checked<Inspection>(std::move(diagnostics));
  }
  Inspection inspection = read_inspection(*tree, rules, diagnostics);
  return {std::move(inspection), std::move(diagnostics)};
}

}  // namespace heelrule
