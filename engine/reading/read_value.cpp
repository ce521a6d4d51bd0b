#include "engine/reading/read_value.hpp"

#include <fmt/format.h>

#include <cmath>
#include <vector>

#include "engine/quantity/range.hpp"
#include "engine/quantity/trimmed.hpp"
#include "engine/reading/map_reader.hpp"

namespace heelrule {
namespace {

constexpr std::string_view not_seen_words = "not seen";

// What stands beside a value.
struct Beside {
  std::optional<Located<Quantity>> doubt;
  bool confirmed = false;
};

class ValueReader {
 public:
  ValueReader(const Trait& trait, Span where, Diagnostics& diagnostics)
      : trait_(trait), where_(where), diagnostics_(diagnostics) {}

  std::optional<RecordedValue> read(const Node& node) {
    if (!node.is_map()) {
      return with_note(read_bare(node, {}), {});
    }
    MapReader map(node, where_, "a value", diagnostics_);
    if (map.has(not_seen_words)) {
      return read_not_seen(node);
    }
    if (!map.has("value")) {
      return with_note(read_bare(node, {}), {});
    }
    const Node* value = map.take("value");
    Beside beside;
    beside.doubt = read_doubt(map);
    beside.confirmed = read_confirmed(map);
    const std::string note = map.remark("note");
    map.finish();
    return value == nullptr ? std::nullopt : with_note(read_bare(*value, beside), note);
  }

 private:
  using Read = std::optional<Value>;

  static std::optional<RecordedValue> with_note(Read value, std::string note) {
    if (!value) {
      return std::nullopt;
    }
    return RecordedValue{std::move(*value), std::move(note)};
  }

  std::optional<RecordedValue> read_not_seen(const Node& node) {
    MapReader map(node, where_, "`not seen`", diagnostics_);
    NotSeen not_seen{map.remark(not_seen_words)};
    std::string note = map.remark("note");
    map.finish();
    return RecordedValue{std::move(not_seen), std::move(note)};
  }

  std::optional<Located<Quantity>> read_doubt(MapReader& map) {
    const auto* measure = std::get_if<MeasureKind>(&trait_.kind);
    const Node* node = map.take("doubt");
    if (node == nullptr) {
      return std::nullopt;
    }
    const Located<std::string> text = read_plain_text(*node, "doubt", diagnostics_);
    if (measure == nullptr) {
      diagnostics_.error(node->where, "`doubt` belongs to a measure",
                         "leave it out, or write a `note`");
      return std::nullopt;
    }
    if (!node->is_text()) {
      return std::nullopt;
    }
    const auto doubt = parse_with_unit(text, measure->unit);
    if (doubt && doubt->stored < 0) {
      diagnostics_.error(text.where, "a standard uncertainty is not below zero",
                         "leave the minus out");
    }
    return doubt ? std::optional(Located<Quantity>{*doubt, text.where}) : std::nullopt;
  }

  bool read_confirmed(MapReader& map) {
    const Located<std::string> text = map.text("confirmed");
    if (!text.value.empty() && !std::holds_alternative<MeasureKind>(trait_.kind)) {
      diagnostics_.error(text.where, "`confirmed` belongs to a measure",
                         "leave it out, or write a `note`");
      return false;
    }
    if (!text.value.empty() && text.value != "yes" && text.value != "no") {
      diagnostics_.error(text.where, fmt::format("`{}` is neither yes nor no", text.value),
                         "write `confirmed: yes` where the reading is true though it is unusual");
    }
    return text.value == "yes";
  }

  Read read_bare(const Node& node, const Beside& beside) {
    if (node.kind == Node::Kind::nothing) {
      return fail(where_,
                  {fmt::format("`{}` has no value", trait_.name), "write one, or `not seen`"});
    }
    if (node.is_text() && node.text == not_seen_words) {
      return NotSeen{};
    }
    if (std::holds_alternative<FibresKind>(trait_.kind)) {
      return read_fibres(node);
    }
    if (node.is_map()) {
      return fail(node.where, {fmt::format("`{}` takes a value, and this is a map", trait_.name),
                               has_sides(trait_.per)
                                   ? "write one value, or `{left: …, right: …}`, or `{value: …, "
                                     "note: …}`"
                                   : "write one value, or `{value: …, note: …}`"});
    }
    if (const auto* measure = std::get_if<MeasureKind>(&trait_.kind)) {
      return read_measure(*measure, node, beside);
    }
    if (node.is_list()) {
      return fail(node.where, {fmt::format("`{}` is no measure, so it has no repeats", trait_.name),
                               "record one value"});
    }
    return read_word(node);
  }

  Read read_word(const Node& node) {
    if (std::holds_alternative<AnswerKind>(trait_.kind)) {
      return read_answer(node);
    }
    if (std::holds_alternative<ShoeSizeKind>(trait_.kind)) {
      return from_parsed(parse_shoe_size(node.text), node);
    }
    if (std::holds_alternative<SockRangeKind>(trait_.kind)) {
      return from_parsed(parse_sock_range(node.text), node);
    }
    return read_level(node);
  }

  template <class T>
  Read from_parsed(const Parsed<T>& parsed, const Node& node) {
    return parsed ? Read(*parsed) : fail(node.where, parsed.problem());
  }

  Read fail(Span where, const Problem& problem) {
    diagnostics_.error(where, problem);
    return std::nullopt;
  }

  Read read_answer(const Node& node) {
    if (node.text == "yes" || node.text == "no") {
      return Answer{node.text == "yes"};
    }
    return fail(node.where, {fmt::format("`{}` is neither yes nor no", node.text),
                             "write `yes`, `no` or `not seen`"});
  }

  Read read_level(const Node& node) {
    const auto level = find_level(trait_, node.text);
    return level ? Read(LevelSeen{*level}) : fail(node.where, level.problem());
  }

  std::optional<Quantity> parse_with_unit(const Located<std::string>& text, Unit due) {
    const auto quantity = parse_quantity_in(text.value, due);
    if (!quantity) {
      diagnostics_.error(text.where, quantity.problem());
      return std::nullopt;
    }
    return *quantity;
  }

  bool is_countable(const MeasureKind& measure, const Quantity& quantity,
                    const Located<std::string>& text) {
    if (measure.unit != Unit::count || quantity.stored == std::trunc(quantity.stored)) {
      return true;
    }
    diagnostics_.error(
        text.where,
        fmt::format("`{}` is no whole number, and `{}` is counted", text.value, trait_.name),
        "write a whole number");
    return false;
  }

  Read read_measure(const MeasureKind& measure, const Node& node, const Beside& beside) {
    Readings readings;
    readings.confirmed = beside.confirmed;
    if (beside.doubt) {
      readings.doubt = beside.doubt->value.stored;
    }
    const std::vector<Located<std::string>> texts = texts_of(node);
    for (const Located<std::string>& text : texts) {
      const auto quantity = parse_with_unit(text, measure.unit);
      if (quantity && is_countable(measure, *quantity, text) &&
          is_plausible(measure, *quantity, text, beside.confirmed)) {
        readings.stored.push_back(quantity->stored);
        readings.unit = quantity->unit;
      }
    }
    const bool sound = !texts.empty() && readings.stored.size() == texts.size();
    return sound ? Read(std::move(readings)) : std::nullopt;
  }

  // The texts of one reading or of several; in a list, a unit at its end goes for all: `[246, 247,
  // 246 mm]`.
  std::vector<Located<std::string>> texts_of(const Node& node) {
    if (!node.is_list()) {
      return {{node.text, node.where}};
    }
    std::vector<Located<std::string>> texts;
    if (node.items.empty()) {
      fail(node.where,
           {"this list of repeats is empty", "write at least one reading, or `not seen`"});
    }
    for (const Node& item : node.items) {
      if (!item.is_text()) {
        fail(item.where, {fmt::format("a reading is a text, and this is {}", in_words(item.kind)),
                          "write values alone, the unit with each or with the last"});
        return {};
      }
      if (item.text == not_seen_words) {
        fail(item.where, {"one of several readings is not seen", "leave that one out"});
        return {};
      }
      texts.push_back({item.text, item.where});
    }
    if (texts.size() > 1) {
      const std::string unit = unit_of(texts.back().value);
      for (Located<std::string>& text : texts) {
        if (!unit.empty() && unit_of(text.value).empty()) {
          text.value += " " + unit;
        }
      }
    }
    return texts;
  }

  static std::string unit_of(std::string_view text) {
    const std::size_t end = text.find_first_not_of("0123456789.,- ");
    return end == std::string_view::npos ? std::string{} : std::string(trimmed(text.substr(end)));
  }

  bool is_plausible(const MeasureKind& measure, const Quantity& quantity,
                    const Located<std::string>& text, bool confirmed) {
    if (!measure.plausible || confirmed || holds(measure.plausible->value, quantity.stored)) {
      return true;
    }
    diagnostics_.error(
        text.where,
        fmt::format("`{}` is outside what is plausible for `{}`: {}", text.value, trait_.name,
                    show(measure.plausible->value, measure.unit, 9)),
        fmt::format(
            "check the value and its unit; if it is true, write `{{value: {}, confirmed: yes}}`",
            text.value));
    return false;
  }

  Read read_fibres(const Node& node) {
    if (!node.is_map()) {
      return fail(node.where, {fmt::format("`{}` is a map from fibre to share, and this is {}",
                                           trait_.name, in_words(node.kind)),
                               "write `{cotton: 80 %, polyester: 20 %}`"});
    }
    std::vector<NamedShare> parts;
    bool sound = true;
    for (const Entry& entry : node.entries) {
      const Located<std::string> text = read_plain_text(entry.value, entry.key.value, diagnostics_);
      const auto share =
          entry.value.is_text() ? parse_with_unit(text, Unit::percent) : std::nullopt;
      const auto fibre = parse_fibre(entry.key.value);
      if (!fibre) {
        diagnostics_.error(entry.key.where, fibre.problem());
      }
      sound = sound && share && fibre;
      if (sound) {
        parts.push_back({entry.key.value, *share});
      }
    }
    return sound ? from_parsed(fibre_content(parts), node) : std::nullopt;
  }

  const Trait& trait_;
  Span where_;
  Diagnostics& diagnostics_;
};

}  // namespace

std::optional<RecordedValue> read_value(const Trait& trait, const Node& node, Span where,
                                        Diagnostics& diagnostics) {
  return ValueReader(trait, where, diagnostics).read(node);
}

}  // namespace heelrule
