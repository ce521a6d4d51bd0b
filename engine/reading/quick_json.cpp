#include "engine/reading/quick_json.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <span>
#include <utility>

#include "engine/reading/json_scanner.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/row_filler.hpp"
#include "engine/reading/trait_keys.hpp"
#include "engine/reading/tree.hpp"
#include "engine/reading/usual_field.hpp"

namespace heelrule {
namespace {

// A longer line may hold a text, a depth or a number of values beyond TreeLimits.
constexpr std::size_t longest = TreeLimits::text_bytes;

// Takes a map: `field` is asked to take each key with its value.
template <class Field>
bool take_fields(JsonScanner& scanner, Field field) {
  if (!scanner.take('{')) {
    return false;
  }
  if (scanner.take('}')) {
    return true;
  }
  bool more = true;
  while (more) {
    if (!field() || !scanner.after_item('}', more)) {
      return false;
    }
  }
  return true;
}

// The same, where `value` is asked to take the value of each key.
template <class Value>
bool take_map(JsonScanner& scanner, Value value) {
  return take_fields(scanner, [&] {
    std::string_view key;
    return scanner.key(key) && value(key);
  });
}

// Takes a list with at least one item, all of them texts.
bool take_texts(JsonScanner& scanner, std::vector<std::string_view>& texts) {
  texts.clear();
  bool more = scanner.take('[');
  while (more) {
    if (!scanner.text(texts.emplace_back()) || !scanner.after_item(']', more)) {
      return false;
    }
  }
  return !texts.empty();
}

// A key that may come once, and where the text beside it goes.
struct TextField {
  std::string_view key;
  std::string* place;
  bool is_taken = false;
};

bool take_field(JsonScanner& scanner, std::string_view key, std::span<TextField> fields) {
  const auto known = std::find_if(fields.begin(), fields.end(),
                                  [&](const TextField& field) { return field.key == key; });
  std::string_view words;
  if (known == fields.end() || std::exchange(known->is_taken, true) || !scanner.text(words)) {
    return false;
  }
  known->place->assign(words);
  return true;
}

using UsualFields = std::vector<UsualField>;  // of each trait

UsualFields usual_fields(const RuleSet& rules, Spacing spacing) {
  UsualFields fields;
  fields.reserve(rules.traits.size());
  for (const Trait& trait : rules.traits) {
    fields.emplace_back(trait.name, has_sides(trait.per), spacing);
  }
  return fields;
}

}  // namespace

class QuickJson::Reader {
 public:
  explicit Reader(const RuleSet& rules)
      : rules_(rules),
        keys_(rules),
        filler_(rules),
        without_blanks_(usual_fields(rules, Spacing::none)),
        with_blanks_(usual_fields(rules, Spacing::usual)) {}

  bool read(std::string_view line, InspectionRow& row) {
    if (line.size() > longest || !is_plainly_written(line)) {
      return false;
    }
    JsonScanner scanner(line);
    const std::size_t colon = line.find(':');
    usual_ = colon != std::string_view::npos && line.substr(colon + 1).starts_with(' ')
                 ? &with_blanks_
                 : &without_blanks_;
    filler_.start(row);
    keys_.start();
    if (!read_record(scanner, row.inspection) || !scanner.at_end()) {
      return false;
    }
    filler_.finish();
    return true;
  }

 private:
  using Sides = RowFiller::Sides;

  bool read_record(JsonScanner& scanner, Inspection& head) {
    bool has_head = false;
    bool has_safety = false;
    bool has_found = false;
    return take_map(scanner,
                    [&](std::string_view key) {
                      if (key == "inspection") {
                        return !std::exchange(has_head, true) && read_head(scanner, head);
                      }
                      if (key == "found") {
                        return !std::exchange(has_found, true) && read_values(scanner, false);
                      }
                      return key == "safety" && !std::exchange(has_safety, true) &&
                             read_values(scanner, true);
                    }) &&
           has_head;
  }

  static bool read_head(JsonScanner& scanner, Inspection& head) {
    std::array<TextField, 5> fields{{{"rules", &head.rules},
                                     {"date", &head.date},
                                     {"observer", &head.observer},
                                     {"client", &head.client},
                                     {"note", &head.note}}};
    std::array<TextField, 2> of_shoe{{{"label", &head.shoe_label}, {"marked", &head.shoe_marked}}};
    bool has_shoe = false;
    const auto take_shoe = [&] {
      return !std::exchange(has_shoe, true) && take_map(scanner, [&](std::string_view key) {
        return take_field(scanner, key, of_shoe);
      });
    };
    return take_map(scanner,
                    [&](std::string_view key) {
                      return key == "shoe" ? take_shoe() : take_field(scanner, key, fields);
                    }) &&
           (head.date.empty() || is_date(head.date));
  }

  bool read_values(JsonScanner& scanner, bool safety) {
    return take_fields(scanner, [&] {
      if (read_as_usual(scanner, safety)) {
        return true;
      }
      std::string_view key;
      if (!scanner.key(key)) {
        return false;
      }
      const auto trait = keys_.take(key);
      if (!trait || is_safety(*trait) != safety) {
        return false;
      }
      return has_sides(rules_.traits[*trait].per)
                 ? read_sides(scanner, *trait)
                 : read_value(scanner, *trait, {Side::none}, nullptr);
    });
  }

  bool is_safety(std::size_t trait) const { return trait < rules_.safety.size(); }

  // Takes the trait that is expected, where it is written as most are; nothing where not. The copy
  // of the scanner never leaves here, so that where it stands can be kept in a register.
  bool read_as_usual(JsonScanner& scanner, bool safety) {
    const std::size_t trait = keys_.expected();
    JsonScanner ahead = scanner;
    if (trait == rules_.traits.size() || is_safety(trait) != safety || !ahead.sees('"')) {
      return false;
    }
    const UsualField& field = (*usual_)[trait];
    std::string_view left;
    std::string_view right;
    if (!field.take(ahead, left, right) ||
        !filler_.plain_text(trait, field.has_sides() ? Side::left : Side::none, left) ||
        (field.has_sides() && !filler_.plain_text(trait, Side::right, right))) {
      return false;
    }
    keys_.take_expected();
    scanner = ahead;
    return true;
  }

  bool read_sides(JsonScanner& scanner, std::size_t trait) {
    if (!scanner.sees('{')) {
      return read_value(scanner, trait, {Side::left, Side::right}, nullptr);
    }
    const JsonScanner whole = scanner;
    bool left = false;
    bool right = false;
    bool is_by_side = true;
    const bool good = take_map(scanner, [&](std::string_view key) {
      if (key == "left") {
        return !std::exchange(left, true) && read_value(scanner, trait, {Side::left}, nullptr);
      }
      if (key == "right") {
        return !std::exchange(right, true) && read_value(scanner, trait, {Side::right}, nullptr);
      }
      is_by_side = left || right;
      return false;
    });
    if (!is_by_side) {
      scanner = whole;
      return read_value(scanner, trait, {Side::left, Side::right}, nullptr);
    }
    return good && (left || right);
  }

  // A value as one text, a list of repeats or a map of fibres; or, where nothing is known yet of
  // what stands beside it, a map of these.
  bool read_value(JsonScanner& scanner, std::size_t trait, Sides sides, const Beside* beside) {
    std::string_view words;
    if (scanner.text(words)) {
      return filler_.text(trait, sides, words, beside == nullptr ? Beside{} : *beside);
    }
    if (scanner.sees('[')) {
      return take_texts(scanner, texts_) &&
             filler_.repeats(trait, sides, texts_, beside == nullptr ? Beside{} : *beside);
    }
    if (std::holds_alternative<FibresKind>(rules_.traits[trait].kind)) {
      const JsonScanner whole = scanner;
      if (read_fibres(scanner, trait, sides, beside == nullptr ? "" : beside->note)) {
        return true;
      }
      scanner = whole;
    }
    return beside == nullptr && read_map(scanner, trait, sides);
  }

  bool read_map(JsonScanner& scanner, std::size_t trait, Sides sides) {
    std::optional<JsonScanner> value;
    std::optional<std::string_view> note;
    std::optional<std::string_view> confirmed;
    std::optional<std::string_view> reason;
    const auto take_words = [&](std::optional<std::string_view>& words) {
      return !words && scanner.text(words.emplace());
    };
    const bool is_read = take_map(scanner, [&](std::string_view key) {
      if (key == "value") {
        return !std::exchange(value, scanner).has_value() && skip_value(scanner);
      }
      return key == "note"        ? take_words(note)
             : key == "confirmed" ? take_words(confirmed)
             : key == "not seen"  ? take_words(reason)
                                  : false;
    });
    const std::string_view answer = confirmed.value_or("no");
    if (!is_read || (answer != "yes" && answer != "no") ||
        value.has_value() == reason.has_value()) {
      return false;
    }
    if (reason) {
      return !confirmed && filler_.not_seen(trait, sides, *reason, note.value_or(""));
    }
    const Beside beside{note.value_or(""), answer == "yes"};
    return read_value(*value, trait, sides, &beside);
  }

  // Passes over a value that is read when all that stands beside it is known.
  bool skip_value(JsonScanner& scanner) {
    std::string_view words;
    if (scanner.sees('[')) {
      return take_texts(scanner, texts_);
    }
    return scanner.sees('{')
               ? take_map(scanner, [&](std::string_view) { return scanner.text(words); })
               : scanner.text(words);
  }

  bool read_fibres(JsonScanner& scanner, std::size_t trait, Sides sides, std::string_view note) {
    shares_.clear();
    return take_map(scanner,
                    [&](std::string_view fibre) {
                      std::string_view words;
                      if (!scanner.text(words)) {
                        return false;
                      }
                      const auto share = parse_quantity(words);
                      if (!share || share->unit != Unit::percent) {
                        return false;
                      }
                      shares_.push_back({fibre, *share});
                      return true;
                    }) &&
           filler_.fibres(trait, sides, shares_, note);
  }

  const RuleSet& rules_;
  TraitKeys keys_;
  RowFiller filler_;
  UsualFields without_blanks_;
  UsualFields with_blanks_;
  const UsualFields* usual_ = nullptr;  // those of the line that is read
  std::vector<std::string_view> texts_;
  std::vector<NamedShare> shares_;
};

QuickJson::QuickJson(const RuleSet& rules) : reader_(std::make_unique<Reader>(rules)) {}
QuickJson::~QuickJson() = default;
QuickJson::QuickJson(QuickJson&&) noexcept = default;
QuickJson& QuickJson::operator=(QuickJson&&) noexcept = default;

bool QuickJson::read(std::string_view line, InspectionRow& row) { return reader_->read(line, row); }

}  // namespace heelrule
