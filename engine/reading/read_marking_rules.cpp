#include "engine/reading/read_marking_rules.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/nearest.hpp"
#include "engine/quantity/quantity.hpp"
#include "engine/quantity/trimmed.hpp"
#include "engine/reading/map_reader.hpp"
#include "engine/reading/parse_share.hpp"
#include "engine/reading/read_document.hpp"
#include "engine/reading/trait_map.hpp"

namespace heelrule {
namespace {

constexpr double most_points = 100;
constexpr double most_weight = 1'000;
constexpr std::string_view no_cap = "none";

Problem not_a_tolerance(std::string_view text, std::string_view sample) {
  return {fmt::format("`{}` is no tolerance for this trait", text),
          fmt::format("write it as in `{}`", sample)};
}

// A tolerance, as the kind of its trait has one.
struct ToleranceOf {
  std::string_view text;

  Parsed<double> operator()(const MeasureKind& measure) const {
    const auto found = parse_quantity_in(text, measure.unit);
    if (!found) {
      return found.problem();
    }
    return found->stored;
  }

  Parsed<double> operator()(const ScaleKind&) const {
    constexpr std::string_view sample = "1 level";
    const std::size_t blank = std::min(text.find(' '), text.size());
    const auto number = parse_decimal(text.substr(0, blank));
    const std::string_view word = trimmed(text.substr(blank));
    const bool counts = word == "level" || word == "levels";
    if (!number || !counts || number->exponent != 0) {
      return not_a_tolerance(text, sample);
    }
    return scaled(*number);
  }

  Parsed<double> operator()(const FibresKind&) const { return parse_share(text); }

  Parsed<double> operator()(const DerivedKind&) const {
    return Problem{"this trait is worked out and not recorded",
                   "give a tolerance to the traits that it is worked out from"};
  }

  template <class Other>
  Parsed<double> operator()(const Other&) const {
    return Problem{"an answer to this trait is right or wrong, with nothing between",
                   "leave it out; measures, scales and fibres have tolerances"};
  }
};

class MarkingReader {
 public:
  MarkingReader(const Node& tree, const RuleSet& rules, Diagnostics& diagnostics)
      : map_(tree, {tree.where.source, tree.where.begin, tree.where.begin}, "a marking file",
             diagnostics),
        rules_(rules),
        diagnostics_(diagnostics),
        marking_(usual_marking_rules(rules)) {}

  MarkingRules read() {
    marking_.title = map_.remark("title");
    each_trait(
        "tolerances", "{foot_length: 2 mm}",
        [&](std::size_t trait, const Located<std::string>& text) { read_tolerance(trait, text); });
    each_trait(
        "weights", "{foot_length: 8}",
        [&](std::size_t trait, const Located<std::string>& text) { read_weight(trait, text); });
    read_level_off();
    read_marks();
    read_caps();
    map_.finish();
    return std::move(marking_);
  }

 private:
  bool expect_map(const Node& node, std::string_view key, std::string_view sample) {
    if (!node.is_map()) {
      diagnostics_.error(node.where,
                         fmt::format("`{}` is a map, and this is {}", key, in_words(node.kind)),
                         fmt::format("write it as in `{}: {}`", key, sample));
    }
    return node.is_map();
  }

  template <class Take>
  void each_trait(std::string_view key, std::string_view sample, Take take) {
    const Node* node = map_.take(key);
    if (node == nullptr || !expect_map(*node, key, sample)) {
      return;
    }
    for (const Entry& entry : node->entries) {
      const Located<std::string> text = read_plain_text(entry.value, entry.key.value, diagnostics_);
      const auto trait =
          named_trait(rules_, entry.key, "use the name of a trait of the rule set", diagnostics_);
      if (trait && !text.value.empty()) {
        take(*trait, text);
      }
    }
  }

  void read_weight(std::size_t trait, const Located<std::string>& text) {
    if (std::holds_alternative<DerivedKind>(rules_.traits[trait].kind)) {
      diagnostics_.error(text.where, "this trait is worked out and not recorded",
                         "give a weight to the traits that it is worked out from");
    } else {
      marking_.weights[trait] = number(text, most_weight);
    }
  }

  void read_tolerance(std::size_t trait, const Located<std::string>& text) {
    const auto found = std::visit(ToleranceOf{text.value}, rules_.traits[trait].kind);
    if (!found) {
      diagnostics_.error(text.where, found.problem());
    } else if (*found < 0) {
      diagnostics_.error(text.where, fmt::format("the tolerance `{}` lies below 0", text.value),
                         "write how far a reading may be off, up or down alike");
    } else {
      marking_.tolerances[trait] = *found;
    }
  }

  std::optional<double> number(const Located<std::string>& text, double most) {
    const auto found = parse_decimal(text.value);
    if (!found) {
      diagnostics_.error(text.where, found.problem());
      return std::nullopt;
    }
    const double value = scaled(*found);
    if (value < 0 || value > most) {
      diagnostics_.error(text.where,
                         fmt::format("`{}` does not lie from 0 to {}", text.value, most),
                         "correct it");
      return std::nullopt;
    }
    return value;
  }

  void read_level_off() {
    const Located<std::string> text = map_.text("level_off");
    if (text.value.empty()) {
      return;
    }
    const auto found = parse_share(text.value);
    if (!found) {
      diagnostics_.error(text.where, found.problem());
    } else {
      marking_.level_off = *found;
    }
  }

  void read_marks() {
    constexpr std::string_view sample = "{able: {from: 70}, again: {from: 0}}";
    const Node* node = map_.take("marks");
    if (node == nullptr || !expect_map(*node, "marks", sample)) {
      return;
    }
    if (node->entries.empty()) {
      diagnostics_.error(node->where, "there is no mark in `marks`",
                         fmt::format("write it as in `marks: {}`", sample));
      return;
    }
    marking_.marks.clear();
    for (const Entry& entry : node->entries) {
      read_mark(entry);
    }
    if (marking_.marks.back().from != 0) {
      diagnostics_.error(node->entries.back().key.where,
                         "the last mark has to begin at 0, so that there is one for every record",
                         "write `from: 0`");
    }
    const std::size_t worst = marking_.marks.size() - 1;
    marking_.caps = {worst, worst, worst};
  }

  void read_mark(const Entry& entry) {
    MapReader map(entry.value, entry.key.where, "a mark", diagnostics_);
    MarkBoundary mark{entry.key.value, 0, {}};
    const Located<std::string> from = map.required_text("from", "70");
    mark.means = map.remark("means");
    map.finish();
    if (mark.name == no_cap) {
      diagnostics_.error(entry.key.where, "`none` cannot be the name of a mark",
                         "it says under `critical` that nothing is capped: choose another word");
    }
    if (!from.value.empty()) {
      mark.from = number(from, most_points).value_or(0);
    }
    if (!marking_.marks.empty() && !(mark.from < marking_.marks.back().from)) {
      diagnostics_.error(
          from.where,
          fmt::format("`{}` does not begin below `{}`", mark.name, marking_.marks.back().name),
          "write the marks best first, each from fewer points than the one before");
    }
    marking_.marks.push_back(std::move(mark));
  }

  void read_caps() {
    const Node* node = map_.take("critical");
    if (node == nullptr) {
      return;
    }
    MapReader map(*node, node->where, "`critical`", diagnostics_);
    read_cap(map, "must", marking_.caps.must);
    read_cap(map, "safety", marking_.caps.safety);
    read_cap(map, "referral", marking_.caps.referral);
    map.finish();
  }

  void read_cap(MapReader& map, std::string_view key, std::optional<std::size_t>& cap) {
    const Located<std::string> name = map.text(key);
    if (name.value.empty()) {
      return;
    }
    if (name.value == no_cap) {
      cap.reset();
      return;
    }
    Nearest nearest(name.value);
    for (std::size_t i = 0; i < marking_.marks.size(); ++i) {
      if (marking_.marks[i].name == name.value) {
        cap = i;
        return;
      }
      nearest.offer(marking_.marks[i].name);
    }
    diagnostics_.error(
        name.where, fmt::format("there is no mark `{}`", name.value),
        nearest.found() ? nearest.question() : "write the name of one of the `marks`, or `none`");
  }

  MapReader map_;
  const RuleSet& rules_;
  Diagnostics& diagnostics_;
  MarkingRules marking_;
};

}  // namespace

MarkingRules usual_marking_rules(const RuleSet& rules) {
  constexpr std::size_t learning = 2;
  constexpr std::size_t again = 3;
  MarkingRules marking;
  marking.tolerances.resize(rules.traits.size());
  marking.weights.resize(rules.traits.size());
  marking.marks = {{"secure", 85, "May inspect alone."},
                   {"able", 70, "May inspect, and has it looked through."},
                   {"learning", 50, "Inspects beside somebody who is able."},
                   {"again", 0, "Takes the lesson again."}};
  marking.caps = {learning, again, again};
  return marking;
}

Checked<MarkingRules> load_marking_rules(const Sources& sources, std::uint32_t source,
                                         const RuleSet& rules) {
  Diagnostics diagnostics;
  const auto tree = read_document(sources, source, diagnostics);
  if (!tree) {
    return Checked<MarkingRules>(std::move(diagnostics));
  }
  MarkingRules marking = MarkingReader(*tree, rules, diagnostics).read();
  return {std::move(marking), std::move(diagnostics)};
}

}  // namespace heelrule
