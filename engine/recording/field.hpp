// The places of a record that are filled one at a time.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/recording/bench_order.hpp"

namespace heelrule {

/// What a record says of itself.
enum class HeadItem : std::uint8_t { date, observer, client, shoe_label, shoe_marked, note };

/// Whether a record gives it below `shoe`.
constexpr bool is_of_shoe(HeadItem item) {
  return item == HeadItem::shoe_label || item == HeadItem::shoe_marked;
}

/// One place: an item of the head, or one side of a trait.
struct Field {
  enum class Kind : std::uint8_t { head, trait };

  Kind kind = Kind::head;
  HeadItem item = HeadItem::date;  ///< of `head`
  std::size_t trait = 0;           ///< of `trait`: index in `RuleSet::traits`
  Side side = Side::none;
  std::size_t section = 0;  ///< of `trait`: index in what `bench_order` gives

  bool operator==(const Field&) const = default;
};

/// Every place of a record in the order in which it is asked for: the head, then the traits in
/// bench order, the left side before the right.
std::vector<Field> fields(const RuleSet& rules, const std::vector<BenchSection>& order);

/// By what name a journal and an amendment know a place: `inspection.date`, `numb_feet`,
/// `foot_length.left`.
std::string key_of(const Field& field, const RuleSet& rules);

/// The key of an item in a record: `date`; of `shoe_label` it is `label`, below `shoe`.
std::string_view key_of(HeadItem item);

/// What an item is, as a question.
std::string_view question_of(HeadItem item);

}  // namespace heelrule
