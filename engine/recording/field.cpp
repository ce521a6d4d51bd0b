#include "engine/recording/field.hpp"

#include <fmt/format.h>

#include <array>

#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

constexpr std::array<HeadItem, 6> items{HeadItem::date,        HeadItem::observer,
                                        HeadItem::client,      HeadItem::shoe_label,
                                        HeadItem::shoe_marked, HeadItem::note};

}  // namespace

std::vector<Field> fields(const RuleSet& rules, const std::vector<BenchSection>& order) {
  std::vector<Field> all;
  all.reserve(items.size() + 2 * rules.traits.size());
  for (const HeadItem item : items) {
    all.push_back({Field::Kind::head, item, 0, Side::none, 0});
  }
  for (std::size_t i = 0; i < order.size(); ++i) {
    for (const std::size_t trait : order[i].traits) {
      for (const Side side : sides_of(has_sides(rules.traits[trait].per))) {
        all.push_back({Field::Kind::trait, HeadItem::date, trait, side, i});
      }
    }
  }
  return all;
}

std::string key_of(const Field& field, const RuleSet& rules) {
  if (field.kind == Field::Kind::head) {
    return fmt::format("inspection.{}{}", is_of_shoe(field.item) ? "shoe." : "",
                       key_of(field.item));
  }
  const std::string& name = rules.traits[field.trait].name;
  return field.side == Side::none ? name : fmt::format("{}.{}", name, in_words(field.side));
}

std::string_view key_of(HeadItem item) {
  switch (item) {
    case HeadItem::date:
      return "date";
    case HeadItem::observer:
      return "observer";
    case HeadItem::client:
      return "client";
    case HeadItem::shoe_label:
      return "label";
    case HeadItem::shoe_marked:
      return "marked";
    case HeadItem::note:
      return "note";
  }
  return {};
}

std::string_view question_of(HeadItem item) {
  switch (item) {
    case HeadItem::date:
      return "Day of the inspection";
    case HeadItem::observer:
      return "Who records? Your code, such as S-07";
    case HeadItem::client:
      return "Whose feet? A code, such as C-014, and never a name";
    case HeadItem::shoe_label:
      return "Which pair? Words that tell it from others";
    case HeadItem::shoe_marked:
      return "Size marked on the pair, as it stands there";
    case HeadItem::note:
      return "Anything to note of the whole visit?";
  }
  return {};
}

}  // namespace heelrule
