// Part of the scorer that is written by hand (see hand_writer.hpp): from a line to numbers.
#pragma once

#include <simdjson.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <utility>
#include <vector>

#include "engine/source/characters.hpp"
#include "thirty_rules.hpp"

namespace thirty {

using Text = std::string_view;

constexpr double unseen = std::numeric_limits<double>::quiet_NaN();

struct Record {
  std::string date, observer, client, shoe;
  double values[2 * trait_count];
  std::vector<std::pair<int, std::string>> notes;  // by trait
};

inline void give_up(Text why) {
  std::fprintf(stderr, "hand-written: %.*s\n", static_cast<int>(why.size()), why.data());
  std::exit(1);
}

// Reads records.
class Reader {
 public:
  void read(Text line, Record& record) {
    namespace dom = simdjson::dom;
    bool plain = true;
    for (const char c : line) {
      plain = plain && c >= 0x20 && c < 0x7F;
    }
    if (!plain && heelrule::first_offence(line)) {
      give_up("a bad character");
    }
    dom::element root;
    if (parser_.parse(line.data(), line.size(), false).get(root) != simdjson::SUCCESS) {
      give_up("bad JSON");
    }
    std::fill(std::begin(record.values), std::end(record.values), unseen);
    record.notes.clear();
    dom::object whole, head, shoe, found;
    if (root.get(whole) || whole["inspection"].get(head) || whole["found"].get(found) ||
        head["shoe"].get(shoe)) {
      give_up("a part is missing");
    }
    take(head, "date", record.date);
    take(head, "observer", record.observer);
    take(head, "client", record.client);
    take(shoe, "label", record.shoe);
    int trait = 0;
    for (const dom::key_value_pair field : found) {
      while (trait < recorded_count && traits[static_cast<std::size_t>(trait)].name != field.key) {
        ++trait;  // records keep the order of the traits
      }
      if (trait == recorded_count) {
        give_up("an unknown trait");
      }
      value(trait, field.value, record);
      ++trait;
    }
  }

 private:
  static void take(simdjson::dom::object object, const char* key, std::string& text) {
    Text words;
    if (object[key].get(words)) {
      give_up("a text is missing");
    }
    text = words;
  }

  static void value(int trait, simdjson::dom::element element, Record& record) {
    const TraitFacts& facts = traits[static_cast<std::size_t>(trait)];
    double* place = record.values + 2 * trait;
    Text text;
    simdjson::dom::object object;
    if (!element.get(text)) {
      place[0] = number(facts, text);
      place[1] = facts.has_sides ? place[0] : unseen;
    } else if (facts.has_sides && !element.get(object)) {
      Text left, right;
      if (object["left"].get(left) || object["right"].get(right)) {
        give_up("a side is missing");
      }
      place[0] = number(facts, left);
      place[1] = number(facts, right);
    } else if (!element.get(object)) {
      Text note;
      if (object["value"].get(text) || object["note"].get(note)) {
        give_up("an unknown form of a value");
      }
      place[0] = number(facts, text);
      record.notes.emplace_back(trait, note);
    }
  }

  static double number(const TraitFacts& facts, Text text) {
    if (text == "not seen") {
      return unseen;
    }
    for (std::size_t level = 0; level < facts.levels.size(); ++level) {
      if (facts.levels[level] == text) {
        return static_cast<double>(level);
      }
    }
    std::uint64_t digits = 0;
    std::size_t at = 0;
    std::size_t decimals = 0;
    for (; at < text.size() && ((text[at] >= '0' && text[at] <= '9') || text[at] == '.'); ++at) {
      if (text[at] == '.') {
        decimals = 1;
        continue;
      }
      digits = digits * 10 + static_cast<std::uint64_t>(text[at] - '0');
      decimals += decimals > 0 ? 1 : 0;
    }
    at += at < text.size() && text[at] == ' ' ? 1 : 0;
    static constexpr double tens[]{1, 1, 10, 100, 1000};
    const double value = static_cast<double>(digits) * facts.per_unit / tens[decimals];
    if (!facts.levels.empty() || text.substr(at) != facts.unit || value < facts.least ||
        value > facts.most) {
      give_up(text);
    }
    return value;
  }

  simdjson::dom::parser parser_;
};

inline double settled(double value) { return std::nearbyint(value * 1e9) / 1e9; }

inline void derive(Record& record) {
  for (const DerivedFacts& facts : derived) {
    for (int side = 0; side < 2; ++side) {
      record.values[2 * facts.result + side] =
          settled(record.values[2 * facts.a + side] - record.values[2 * facts.b + side]);
    }
  }
}

}  // namespace thirty
