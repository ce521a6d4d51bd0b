#include "engine/reading/read_trait.hpp"

#include <fmt/format.h>

#include <array>

#include "engine/quantity/nearest.hpp"
#include "engine/quantity/trimmed.hpp"
#include "engine/reading/map_reader.hpp"
#include "engine/reading/parse_share.hpp"
#include "engine/reading/read_text.hpp"

namespace heelrule {
namespace {

constexpr std::array<std::string_view, 7> kind_keys{"measure", "scale",  "answer", "choice",
                                                    "content", "marked", "derive"};

constexpr double most_confusion = 0.5;

Problem no_unit(std::string_view written) {
  return unknown_unit(written, "`mm`, `°`, `g`, `percent` or `count`");
}

class TraitReader {
 public:
  explicit TraitReader(MapReader& map) : map_(map), diagnostics_(map.diagnostics()) {}

  TraitKind read_kind() {
    std::vector<std::string_view> given;
    for (const std::string_view key : kind_keys) {
      if (map_.has(key)) {
        given.push_back(key);
      }
    }
    if (given.size() > 1) {
      diagnostics_.error(
          map_.where(given[1]),
          fmt::format("a trait is of one kind, and this one has `{}` and `{}`", given[0], given[1]),
          "keep one of them; what was built on is left out by `drop`",
          {{map_.where(given[0]), "the other one is here"}});
    }
    if (given.empty() && !map_.excuses_missing()) {
      diagnostics_.error(map_.where(), "nothing says what kind of value this trait has",
                         fmt::format("add one of `{}`", fmt::join(kind_keys, "`, `")));
    }
    TraitKind kind = UnreadKind{};
    for (const std::string_view key : kind_keys) {
      // Taken even when absent, so that a misspelt kind is offered its right name.
      const Node* node = map_.take(key);
      if (node != nullptr && !given.empty() && key == given[0]) {
        kind = read_kind(key, *node);
      }
    }
    read_measure_keys(kind);
    read_confusion(kind);
    read_shown(kind);
    return kind;
  }

 private:
  TraitKind read_kind(std::string_view key, const Node& node) {
    if (key == "scale") {
      return ScaleKind{read_levels(node, key), {}};
    }
    if (key == "choice") {
      return ChoiceKind{read_levels(node, key)};
    }
    const Located<std::string> text = read_plain_text(node, key, diagnostics_);
    if (key == "measure") {
      const auto unit = read_unit(text);
      return unit ? TraitKind(MeasureKind{*unit, {}, {}, {}}) : TraitKind(UnreadKind{});
    }
    if (key == "derive") {
      return DerivedKind{text, std::nullopt};
    }
    if (key == "marked") {
      if (!expect_one_of(text, {"shoe size", "sock range"})) {
        return UnreadKind{};
      }
      return text.value == "sock range" ? TraitKind(SockRangeKind{}) : TraitKind(ShoeSizeKind{});
    }
    if (key == "content") {
      expect_one_of(text, {"fibres"});
      return FibresKind{};
    }
    expect_one_of(text, {"yes or no"});
    return AnswerKind{};
  }

  bool expect_one_of(const Located<std::string>& text, std::vector<std::string_view> known) {
    for (const std::string_view word : known) {
      if (text.value == word) {
        return true;
      }
    }
    if (!text.value.empty()) {
      diagnostics_.error(text.where, fmt::format("`{}` is not known here", text.value),
                         fmt::format("write `{}`", fmt::join(known, "` or `")));
    }
    return false;
  }

  std::optional<Unit> read_unit(const Located<std::string>& text) {
    const auto unit = find_unit(text.value);
    if (!unit && !text.value.empty()) {
      diagnostics_.error(text.where, no_unit(text.value));
    }
    return unit;
  }

  std::vector<Level> read_levels(const Node& node, std::string_view key) {
    std::vector<Level> levels;
    if (node.is_list()) {
      for (const Node& item : node.items) {
        const Located<std::string> name = read_plain_text(item, "level", diagnostics_);
        if (item.is_text()) {
          add_level(levels, name, {});
        }
      }
    } else if (node.is_map()) {
      for (const Entry& entry : node.entries) {
        add_level(levels, entry.key, read_text(entry.value, "level", diagnostics_));
      }
    } else {
      diagnostics_.error(node.where,
                         fmt::format("`{}` is a list of levels, and this is a text", key),
                         "write `[soft, medium, firm]`");
    }
    if (node.items.size() < 2 && node.entries.size() < 2 && !node.is_text()) {
      diagnostics_.error(node.where, fmt::format("`{}` needs at least two levels", key),
                         "write `[soft, medium, firm]`");
    }
    return levels;
  }

  void add_level(std::vector<Level>& levels, Located<std::string> name, Text meaning) {
    const bool well_formed = !name.value.empty() && name.value.size() <= 64 &&
                             name.value.front() != ' ' && name.value.back() != ' ' &&
                             name.value.find_first_not_of(
                                 "abcdefghijklmnopqrstuvwxyz0123456789 _-") == std::string::npos;
    if (!well_formed || name.value == "yes" || name.value == "no" || name.value == "not seen") {
      diagnostics_.error(name.where, fmt::format("`{}` cannot be the name of a level", name.value),
                         well_formed
                             ? "`yes`, `no` and `not seen` have a meaning of their own"
                             : "use small letters, digits, blanks, `_` and `-`, 64 at most");
      return;
    }
    for (const Level& level : levels) {
      if (level.name.value == name.value) {
        diagnostics_.error(name.where,
                           fmt::format("the level `{}` comes a second time", name.value),
                           "keep one of the two", {{level.name.where, "the first one is here"}});
        return;
      }
    }
    levels.push_back({std::move(name), std::move(meaning)});
  }

  void read_measure_keys(TraitKind& kind) {
    auto* measure = std::get_if<MeasureKind>(&kind);
    const Node* plausible = map_.take("plausible");
    const Node* doubt = map_.take("doubt");
    const Node* resolution = map_.take("resolution");
    for (const auto& [node, key] : {std::pair(plausible, "plausible"), std::pair(doubt, "doubt"),
                                    std::pair(resolution, "resolution")}) {
      const bool unread = std::holds_alternative<UnreadKind>(kind);
      if (node != nullptr && measure == nullptr && !unread) {
        diagnostics_.error(node->where, fmt::format("`{}` belongs to a measure", key),
                           "leave it out, or give the trait a `measure:` with its unit");
      }
    }
    if (measure != nullptr && plausible != nullptr) {
      read_plausible(*measure, *plausible);
    }
    if (measure != nullptr && doubt != nullptr) {
      measure->doubt = read_amount(*measure, *doubt, "doubt", "a standard uncertainty");
    }
    if (measure != nullptr && resolution != nullptr) {
      measure->resolution = read_amount(*measure, *resolution, "resolution", "a step");
    }
  }

  void read_plausible(MeasureKind& measure, const Node& node) {
    const Located<std::string> text = read_plain_text(node, "plausible", diagnostics_);
    const auto range = parse_range(text.value);
    if (!node.is_text()) {
      return;
    }
    if (!range) {
      diagnostics_.error(text.where, range.problem());
      return;
    }
    const std::string_view from = std::string_view(text.value).substr(0, text.value.find(".."));
    const Problem problem = accepts(measure.unit, range->from.unit, trimmed(from));
    if (!problem.message.empty()) {
      diagnostics_.error(text.where, problem);
      return;
    }
    measure.plausible = {*range, text.where};
  }

  // An amount in the unit of the measure, 0 or more; `what` names it in messages.
  std::optional<Located<Quantity>> read_amount(const MeasureKind& measure, const Node& node,
                                               std::string_view key, std::string_view what) {
    const Located<std::string> text = read_plain_text(node, key, diagnostics_);
    if (!node.is_text()) {
      return std::nullopt;
    }
    const auto amount = parse_quantity_in(text.value, measure.unit);
    if (!amount) {
      diagnostics_.error(text.where, amount.problem());
      return std::nullopt;
    }
    if (amount->stored < 0) {
      diagnostics_.error(text.where, fmt::format("{} is not below zero", what),
                         "leave the minus out");
      return std::nullopt;
    }
    return Located<Quantity>{*amount, text.where};
  }

  void read_confusion(TraitKind& kind) {
    auto* scale = std::get_if<ScaleKind>(&kind);
    const Node* node = map_.take("confusion");
    if (node == nullptr || std::holds_alternative<UnreadKind>(kind)) {
      return;
    }
    if (scale == nullptr) {
      diagnostics_.error(node->where, "`confusion` belongs to a scale",
                         "leave it out, or give the trait a `scale:`, whose levels have an order");
      return;
    }
    const Located<std::string> text = read_plain_text(*node, "confusion", diagnostics_);
    if (!node->is_text()) {
      return;
    }
    if (const auto chance = parse_share(text.value); !chance) {
      diagnostics_.error(text.where, chance.problem());
    } else if (*chance > most_confusion) {
      diagnostics_.error(text.where, "a level that is wrong more often than right tells nothing",
                         "write a chance of 50 % at most, or ask the question in another way");
    } else {
      scale->confusion = {*chance, text.where};
    }
  }

  void read_shown(TraitKind& kind) {
    auto* derived = std::get_if<DerivedKind>(&kind);
    const Node* shown = map_.take("shown");
    if (shown == nullptr) {
      return;
    }
    if (derived == nullptr) {
      if (std::holds_alternative<UnreadKind>(kind)) {
        return;
      }
      diagnostics_.error(shown->where, "`shown` belongs to a derived trait",
                         "leave it out: a measure is printed in its own unit");
      return;
    }
    const Located<std::string> text = read_plain_text(*shown, "shown", diagnostics_);
    if (const auto unit = find_unit(text.value)) {
      derived->shown = {*unit, text.where};
    } else if (!text.value.empty()) {
      diagnostics_.error(text.where, no_unit(text.value));
    }
  }

  MapReader& map_;
  Diagnostics& diagnostics_;
};

// Where a trait stands among the questions.
void read_place(MapReader& map, bool derived, Trait& trait) {
  for (const std::string_view key : {"section", "order"}) {
    const Node* node = map.take(key);
    if (node != nullptr && derived) {
      map.diagnostics().error(node->where, "a derived trait is not asked for",
                              fmt::format("leave `{}` out", key));
    }
  }
  if (derived) {
    return;
  }
  Located<std::string> section = map.text("section");
  if (!section.value.empty()) {
    trait.section = std::move(section);
  }
  trait.order = map.number("order", 0);
}

Per read_per(MapReader& map, bool derived) {
  const Node* node = map.take("per");
  if (node == nullptr) {
    return Per::pair;
  }
  if (derived) {
    map.diagnostics().error(node->where, "the sides of a derived trait follow from its formula",
                            "leave `per` out");
    return Per::pair;
  }
  const Located<std::string> text = read_plain_text(*node, "per", map.diagnostics());
  Nearest nearest(text.value);
  for (const auto& [word, per] : {std::pair(std::string_view("client"), Per::client),
                                  std::pair(std::string_view("pair"), Per::pair),
                                  std::pair(std::string_view("foot"), Per::foot),
                                  std::pair(std::string_view("shoe"), Per::shoe)}) {
    if (text.value == word) {
      return per;
    }
    nearest.offer(word);
  }
  if (!text.value.empty()) {
    map.diagnostics().error(
        text.where, fmt::format("`{}` is not what a trait can be taken of", text.value),
        nearest.found() ? nearest.question() : "write `client`, `pair`, `foot` or `shoe`");
  }
  return Per::pair;
}

}  // namespace

Trait read_trait(const Located<std::string>& name, const Node& node, Diagnostics& diagnostics) {
  check_name(name, "trait", diagnostics);
  MapReader map(node, name.where, "a trait", diagnostics);
  Trait trait;
  trait.name = name.value;
  trait.where = name.where;
  trait.ask = require_text(map, "ask", "Length of the standing foot");
  trait.how = take_text(map, "how");
  read_place(map, map.has("derive"), trait);
  trait.per = read_per(map, map.has("derive"));
  trait.kind = TraitReader(map).read_kind();
  map.finish();
  return trait;
}

SafetyEntry read_safety(const Located<std::string>& name, const Node& node,
                        Diagnostics& diagnostics) {
  check_name(name, "safety question", diagnostics);
  MapReader map(node, name.where, "a safety question", diagnostics);
  SafetyEntry entry;
  entry.trait.name = name.value;
  entry.trait.where = name.where;
  entry.trait.ask = require_text(map, "ask", "Are the feet numb?");
  entry.trait.how = take_text(map, "how");
  entry.trait.per = map.has("per") ? read_per(map, false) : Per::client;
  entry.trait.kind = AnswerKind{};
  entry.referral = require_text(map, "referral", "See a licensed practitioner first.");
  map.finish();
  return entry;
}

}  // namespace heelrule
