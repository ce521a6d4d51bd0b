// Values of a batch in their plainest form, read without looking any closer.
#pragma once

#include <optional>
#include <string_view>

#include "engine/model/inspection.hpp"
#include "engine/model/trait.hpp"

namespace heelrule {

/// Reads the text of one value of a trait, where it is written plainly: a measure in the unit of
/// the trait, a level, yes or no, `not seen`. Everything else, sound or not, is left to
/// `read_value`, which knows all ways to write a value and what is wrong with the others.
class PlainValue {
 public:
  /// `trait` must outlive this object.
  explicit PlainValue(const Trait& trait);

  /// What `plain_number` of the value would be, not-a-number for `not seen`; nothing where the text
  /// is not plain, or is a reading outside of the plausible range that is not `confirmed`.
  std::optional<double> read(std::string_view text, bool confirmed) const;

  /// One reading of a measure; one of several may leave its unit to the last of them.
  std::optional<double> reading(std::string_view text, bool unit_follows, bool confirmed) const;

  /// The value of which this is the number.
  Value value(double number) const;

  bool is_measure() const { return kind_ == Kind::measure; }

 private:
  enum class Kind : std::uint8_t { measure, levels, answer, other };

  std::optional<double> level(std::string_view text) const;

  const Trait* trait_;
  Kind kind_ = Kind::other;
  Unit written_ = Unit::count;  // of a measure: in which it is printed
  const UnitFacts* unit_ = nullptr;
  bool is_count_ = false;
  double least_;  // plausible
  double most_;
};

}  // namespace heelrule
