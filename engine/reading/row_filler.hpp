// Values of one record, put into their places in a row.
#pragma once

#include <initializer_list>
#include <span>
#include <string_view>
#include <vector>

#include "engine/model/inspection_row.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/quantity/fibre_content.hpp"
#include "engine/reading/known_numbers.hpp"
#include "engine/reading/plain_value.hpp"

namespace heelrule {

/// What stands beside a value.
struct Beside {
  std::string_view note;
  bool confirmed = false;
};

/// Fills rows with values in their usual form. Each function gives false where a value is not in
/// that form; then the record has to be read by `read_inspection`, and the row is of no use.
class RowFiller {
 public:
  using Sides = std::initializer_list<Side>;

  /// `rules` must outlive this object.
  explicit RowFiller(const RuleSet& rules);

  /// Begins a row.
  void start(InspectionRow& row);

  /// A value of a plain kind, written as one text with nothing beside it. `KnownNumbers::longest`
  /// bytes from its start must be readable.
  bool plain_text(std::size_t trait, Side side, std::string_view text) {
    return known_[trait].find(text, row_->numbers[number_place(trait, side)],
                              [&] { return plain_[trait].read(text, false); });
  }

  /// A value written as one text.
  bool text(std::size_t trait, Sides sides, std::string_view text, const Beside& beside);

  /// Repeats of a measure. At least one.
  bool repeats(std::size_t trait, Sides sides, std::span<const std::string_view> texts,
               const Beside& beside);

  bool not_seen(std::size_t trait, Sides sides, std::string_view reason, std::string_view note);

  bool fibres(std::size_t trait, Sides sides, std::span<const NamedShare> parts,
              std::string_view note);

  /// Ends the row.
  void finish();

 private:
  void number(std::size_t trait, Sides sides, double value, std::string_view note);
  void keep(std::size_t trait, Sides sides, const Value& value, std::string_view note);

  const RuleSet& rules_;
  std::vector<PlainValue> plain_;
  std::vector<KnownNumbers> known_;  // of each trait
  InspectionRow* row_ = nullptr;
};

}  // namespace heelrule
