#include "engine/reading/quick_json.hpp"

#include <simdjson.h>

#include <algorithm>
#include <array>
#include <utility>

#include "engine/reading/read_inspection.hpp"
#include "engine/reading/row_filler.hpp"
#include "engine/reading/trait_keys.hpp"
#include "engine/reading/tree.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

namespace dom = simdjson::dom;

// A longer line may hold a text, a depth or a number of values beyond TreeLimits.
constexpr std::size_t longest = TreeLimits::text_bytes;

bool get(dom::element element, std::string_view& text) {
  return element.get(text) == simdjson::SUCCESS;
}

bool get(dom::element element, dom::object& object) {
  return element.get(object) == simdjson::SUCCESS;
}

// What a file must hold too. An escape can bring in what the line itself does not hold, so a line
// with one is not in its usual form.
bool passes(std::string_view line) {
  return line.find('\\') == std::string_view::npos && !first_offence(line);
}

// Takes the fields of a map that have one of `keys`, each once; false if there is another field.
template <std::size_t count>
bool take(dom::object object, const std::array<std::string_view, count>& keys,
          std::array<std::optional<dom::element>, count>& fields) {
  for (const dom::key_value_pair field : object) {
    const auto at = std::find(keys.begin(), keys.end(), field.key);
    if (at == keys.end() || fields[static_cast<std::size_t>(at - keys.begin())]) {
      return false;
    }
    fields[static_cast<std::size_t>(at - keys.begin())] = field.value;
  }
  return true;
}

// A text that may be left out.
bool text(const std::optional<dom::element>& field, std::string& place) {
  std::string_view words;
  if (field && !get(*field, words)) {
    return false;
  }
  place = words;
  return true;
}

}  // namespace

class QuickJson::Reader {
 public:
  explicit Reader(const RuleSet& rules) : rules_(rules), keys_(rules), filler_(rules) {}

  bool read(std::string_view line, InspectionRow& row) {
    dom::element root;
    dom::object record;
    if (line.size() > longest || !passes(line) ||
        parser_.parse(line.data(), line.size(), false).get(root) != simdjson::SUCCESS ||
        !get(root, record)) {
      return false;
    }
    filler_.start(row);
    keys_.start();
    if (!read_record(record, row.inspection)) {
      return false;
    }
    filler_.finish();
    return true;
  }

 private:
  using Sides = RowFiller::Sides;

  bool read_record(dom::object record, Inspection& head) {
    static constexpr std::array<std::string_view, 3> names{"inspection", "safety", "found"};
    std::array<std::optional<dom::element>, 3> parts;
    if (!take(record, names, parts) || !parts[0] || !read_head(*parts[0], head)) {
      return false;
    }
    return (!parts[1] || read_values(*parts[1], true)) &&
           (!parts[2] || read_values(*parts[2], false));
  }

  static bool read_head(dom::element element, Inspection& head) {
    static constexpr std::array<std::string_view, 6> names{"rules",  "date", "observer",
                                                           "client", "note", "shoe"};
    static constexpr std::array<std::string_view, 2> shoe_names{"label", "marked"};
    std::array<std::optional<dom::element>, 6> fields;
    std::array<std::optional<dom::element>, 2> shoe_fields;
    dom::object object;
    if (!get(element, object) || !take(object, names, fields)) {
      return false;
    }
    dom::object shoe;
    if (fields[5] && (!get(*fields[5], shoe) || !take(shoe, shoe_names, shoe_fields))) {
      return false;
    }
    return text(fields[0], head.rules) && text(fields[1], head.date) &&
           text(fields[2], head.observer) && text(fields[3], head.client) &&
           text(fields[4], head.note) && text(shoe_fields[0], head.shoe_label) &&
           text(shoe_fields[1], head.shoe_marked) && (head.date.empty() || is_date(head.date));
  }

  bool read_values(dom::element element, bool safety) {
    dom::object values;
    if (!get(element, values)) {
      return false;
    }
    for (const dom::key_value_pair field : values) {
      const auto trait = keys_.take(field.key);
      if (!trait || (*trait < rules_.safety.size()) != safety) {
        return false;
      }
      const bool good = has_sides(rules_.traits[*trait].per)
                            ? read_sides(*trait, field.value)
                            : read_value(*trait, {Side::none}, field.value);
      if (!good) {
        return false;
      }
    }
    return true;
  }

  bool read_sides(std::size_t trait, dom::element element) {
    dom::object object;
    if (!get(element, object)) {
      return read_value(trait, {Side::left, Side::right}, element);
    }
    bool left = false;
    bool right = false;
    for (const dom::key_value_pair field : object) {
      bool good = false;
      if (field.key == "left") {
        good = !std::exchange(left, true) && read_value(trait, {Side::left}, field.value);
      } else if (field.key == "right") {
        good = !std::exchange(right, true) && read_value(trait, {Side::right}, field.value);
      } else if (!left && !right) {
        return read_map(trait, {Side::left, Side::right}, object);
      }
      if (!good) {
        return false;
      }
    }
    return left || right;
  }

  bool read_value(std::size_t trait, Sides sides, dom::element element) {
    std::string_view words;
    dom::object object;
    if (get(element, words)) {
      return filler_.text(trait, sides, words, {});
    }
    return get(element, object) ? read_map(trait, sides, object)
                                : read_repeats(trait, sides, element, {});
  }

  bool read_map(std::size_t trait, Sides sides, dom::object object) {
    static constexpr std::array<std::string_view, 4> names{"value", "note", "confirmed",
                                                           "not seen"};
    std::array<std::optional<dom::element>, 4> fields;
    if (!take(object, names, fields)) {
      return read_fibres(trait, sides, object, {});
    }
    const auto& [value, note, confirmed, reason] = fields;
    Beside beside;
    std::string_view answer = "no";
    if ((note && !get(*note, beside.note)) || (confirmed && !get(*confirmed, answer)) ||
        (answer != "yes" && answer != "no") || value.has_value() == reason.has_value()) {
      return false;
    }
    beside.confirmed = answer == "yes";
    std::string_view words;
    if (reason) {
      return !confirmed && get(*reason, words) &&
             filler_.not_seen(trait, sides, words, beside.note);
    }
    if (get(*value, words)) {
      return filler_.text(trait, sides, words, beside);
    }
    dom::object parts;
    return get(*value, parts) ? read_fibres(trait, sides, parts, beside)
                              : read_repeats(trait, sides, *value, beside);
  }

  bool read_fibres(std::size_t trait, Sides sides, dom::object object, const Beside& beside) {
    if (!std::holds_alternative<FibresKind>(rules_.traits[trait].kind)) {
      return false;
    }
    shares_.clear();
    for (const dom::key_value_pair field : object) {
      std::string_view words;
      if (!get(field.value, words)) {
        return false;
      }
      const auto share = parse_quantity(words);
      if (!share || share->unit != Unit::percent) {
        return false;
      }
      shares_.push_back({field.key, *share});
    }
    return filler_.fibres(trait, sides, shares_, beside.note);
  }

  bool read_repeats(std::size_t trait, Sides sides, dom::element element, const Beside& beside) {
    dom::array items;
    if (element.get(items) != simdjson::SUCCESS || items.size() == 0) {
      return false;
    }
    texts_.clear();
    for (const dom::element item : items) {
      std::string_view words;
      if (!get(item, words)) {
        return false;
      }
      texts_.push_back(words);
    }
    return filler_.repeats(trait, sides, texts_, beside);
  }

  const RuleSet& rules_;
  TraitKeys keys_;
  RowFiller filler_;
  dom::parser parser_;
  std::vector<std::string_view> texts_;
  std::vector<NamedShare> shares_;
};

QuickJson::QuickJson(const RuleSet& rules) : reader_(std::make_unique<Reader>(rules)) {}
QuickJson::~QuickJson() = default;
QuickJson::QuickJson(QuickJson&&) noexcept = default;
QuickJson& QuickJson::operator=(QuickJson&&) noexcept = default;

bool QuickJson::read(std::string_view line, InspectionRow& row) { return reader_->read(line, row); }

}  // namespace heelrule
