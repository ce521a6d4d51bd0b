#include "engine/reading/read_rule.hpp"

#include <fmt/format.h>

#include <cmath>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/trimmed.hpp"
#include "engine/reading/map_reader.hpp"
#include "engine/reading/read_text.hpp"

namespace heelrule {
namespace {

constexpr double heaviest = 1'000'000;

// One end of what a band earns, in millionths.
Parsed<double> parse_credit(std::string_view written) {
  const std::string_view text = trimmed(written);
  const auto quantity = parse_quantity(text);
  if (!quantity) {
    return quantity.problem();
  }
  const bool zero = quantity->stored == 0;
  if (quantity->unit != Unit::percent && !zero) {
    return Problem{fmt::format("`{}` is no credit", text), "write a percentage, `0 %` to `100 %`"};
  }
  if (quantity->stored < 0 || quantity->stored > 1) {
    return Problem{fmt::format("a credit of {} is not between 0 % and 100 %", text),
                   "write a percentage, `0 %` to `100 %`"};
  }
  return std::round(quantity->stored * full_credit);
}

class RuleReader {
 public:
  RuleReader(const Located<std::string>& name, const Node& node, Diagnostics& diagnostics)
      : map_(node, name.where, "a rule", diagnostics), diagnostics_(diagnostics) {
    check_name(name, "rule", diagnostics);
    rule_.name = name.value;
    rule_.where = name.where;
  }

  Rule read() {
    rule_.title = take_text(map_, "title");
    rule_.section = map_.required_text("section", "fit");
    read_weight();
    read_must();
    rule_.reads = map_.required_text("reads", "toe_allowance");
    read_sides();
    if (map_.has("applies")) {
      rule_.applies = map_.text("applies");
    }
    read_credit();
    rule_.because = require_text(map_, "because", "why it matters, in a sentence");
    rule_.source = require_text(map_, "source", "common practice");
    rule_.words.caution = take_text(map_, "caution");
    rule_.words.referral = take_text(map_, "referral");
    rule_.words.advice = take_text(map_, "advice");
    rule_.despite_referral = map_.yes_or_no("despite_referral");
    rule_.protects = map_.yes_or_no("protects");
    map_.finish();
    return std::move(rule_);
  }

 private:
  void read_weight() {
    const Located<std::string> text = map_.required_text("weight", "5");
    rule_.weight.where = text.where;
    if (text.value.empty()) {
      return;
    }
    const auto number = parse_decimal(text.value);
    if (!number) {
      diagnostics_.error(text.where, number.problem());
      return;
    }
    const double weight = scaled(*number);
    if (number->negative && weight != 0) {
      diagnostics_.error(text.where, "a weight is not below zero", "leave the minus out");
    } else if (weight > heaviest || number->exponent < -3) {
      diagnostics_.error(text.where, fmt::format("`{}` is no weight", text.value),
                         "write a number up to 1000000, with at most three decimals");
    } else {
      rule_.weight.value = scaled(*number, 1, 3);
    }
  }

  void read_must() {
    const Node* node = map_.take("must");
    if (node == nullptr) {
      return;
    }
    if (!node->is_map()) {
      diagnostics_.error(
          node->where, "a must needs the grade that it caps",
          "write `must: {caps: GRADE}` with the best grade that remains when it fails");
      return;
    }
    MapReader must(*node, node->where, "a must", diagnostics_);
    rule_.caps = must.required_text("caps", "GRADE");
    must.finish();
  }

  void read_sides() {
    const Located<std::string> text = map_.text("sides");
    if (text.value.empty() || text.value == "worse") {
      return;
    }
    if (text.value == "mean") {
      rule_.sides = SideRule::mean;
    } else if (text.value == "each") {
      rule_.sides = SideRule::each;
    } else {
      diagnostics_.error(text.where, fmt::format("`{}` is no way for sides to count", text.value),
                         "write `worse`, `mean` or `each`");
    }
  }

  void read_credit() {
    const Node* bands = map_.take("bands");
    const Node* levels = map_.take("levels");
    if (bands != nullptr && levels != nullptr) {
      diagnostics_.error(levels->where, "a rule has bands or levels, not both",
                         "keep one of them; what was built on is left out by `drop`",
                         {{bands->where, "the bands are here"}});
      return;
    }
    if (bands == nullptr && levels == nullptr) {
      if (!map_.has("bands") && !map_.has("levels") && !map_.excuses_missing()) {
        diagnostics_.error(
            map_.where(), "nothing says what values earn",
            "add `bands:` for a measure, or `levels:` for a scale, choice or yes/no");
      }
      return;
    }
    rule_.credit_where = bands != nullptr ? bands->where : levels->where;
    if (bands != nullptr) {
      read_bands(*bands);
    } else {
      read_levels(*levels);
    }
  }

  void read_bands(const Node& node) {
    if (!node.is_list() || node.items.empty()) {
      diagnostics_.error(node.where, "`bands` is a list, lowest values first",
                         "write `- {name: short, below: 6 mm, earns: 0}` and so on");
      return;
    }
    for (const Node& item : node.items) {
      MapReader map(item, item.where, "a band", diagnostics_);
      if (!item.is_map()) {
        continue;
      }
      Band band;
      band.name = map.required_text("name", "short");
      if (!band.name.value.empty()) {
        check_name(band.name, "band", diagnostics_);
      }
      read_cut(map, band);
      band.earns = read_earns(map);
      band.words = read_words(map);
      map.finish();
      rule_.bands.push_back(std::move(band));
    }
  }

  void read_cut(MapReader& map, Band& band) {
    const Node* below = map.take("below");
    const Node* up_to = map.take("up to");
    band.cut_unread = map.has("below") || map.has("up to");
    if (below != nullptr && up_to != nullptr) {
      diagnostics_.error(up_to->where, "a band ends once: `below` or `up to`", "keep one of them");
      return;
    }
    const Node* node = below != nullptr ? below : up_to;
    if (node == nullptr) {
      return;
    }
    const Located<std::string> text =
        read_plain_text(*node, below != nullptr ? "below" : "up to", diagnostics_);
    const auto at = parse_quantity(text.value);
    if (at) {
      band.cut = Cut{*at, up_to != nullptr, text.where};
      band.cut_unread = false;
    } else if (node->is_text()) {
      diagnostics_.error(text.where, at.problem());
    }
  }

  void read_levels(const Node& node) {
    if (node.entries.empty()) {
      diagnostics_.error(node.where, "`levels` is a map from level to credit",
                         "write `{soft: 0, medium: 60 %, firm: 100 %}`");
      return;
    }
    for (const Entry& entry : node.entries) {
      LevelCredit level;
      level.level = entry.key;
      if (entry.value.is_map()) {
        MapReader map(entry.value, entry.key.where, "a level", diagnostics_);
        level.earns = read_earns(map);
        level.words = read_words(map);
        map.finish();
      } else if (entry.value.kind == Node::Kind::nothing) {
        diagnostics_.error(entry.key.where, fmt::format("`{}` has no value", entry.key.value),
                           "write what it earns");
      } else {
        const auto text = read_plain_text(entry.value, entry.key.value, diagnostics_);
        level.earns = entry.value.is_text() ? credit_of(text) : Located<Credit>{{}, text.where};
      }
      rule_.levels.push_back(std::move(level));
    }
  }

  Located<Credit> read_earns(MapReader& map) {
    const Located<std::string> text = map.required_text("earns", "100 %");
    return text.value.empty() ? Located<Credit>{{}, text.where} : credit_of(text);
  }

  Located<Credit> credit_of(const Located<std::string>& text) {
    const std::string_view all = text.value;
    const std::size_t dots = all.find("..");
    const auto from = parse_credit(all.substr(0, dots));
    const auto to = dots == std::string_view::npos ? from : parse_credit(all.substr(dots + 2));
    if (!from || !to) {
      diagnostics_.error(text.where, from ? to.problem() : from.problem());
      return {{}, text.where};
    }
    return {{*from, *to}, text.where};
  }

  static Words read_words(MapReader& map) {
    Words words;
    words.say = take_text(map, "say");
    words.caution = take_text(map, "caution");
    words.referral = take_text(map, "referral");
    words.advice = take_text(map, "advice");
    return words;
  }

  MapReader map_;
  Diagnostics& diagnostics_;
  Rule rule_;
};

}  // namespace

Rule read_rule(const Located<std::string>& name, const Node& node, Diagnostics& diagnostics) {
  return RuleReader(name, node, diagnostics).read();
}

}  // namespace heelrule
