// A trait as a question to the person at the bench.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/rule_set.hpp"

namespace heelrule {

/// What kind of answer a question takes.
enum class AnswerForm : std::uint8_t {
  measure,
  scale,      ///< one of the levels, lowest first
  choice,     ///< one of the levels, in no order
  yes_or_no,  ///< also of every safety question
  fibres,
  shoe_size,
  sock_range,
};

/// Everything that one question needs.
struct Question {
  std::size_t trait = 0;  ///< index in `RuleSet::traits`
  std::string name;       ///< of the trait, by which a record knows it
  bool is_safety = false;
  Text ask;  ///< in every language of the rule set
  Text how;  ///< may be empty
  Per per = Per::pair;
  AnswerForm form = AnswerForm::measure;
  std::vector<Unit> units;                 ///< of a measure: its own first
  std::optional<QuantityRange> plausible;  ///< of a measure
  std::vector<Level> levels;               ///< of a scale or a choice

  /// Whether left and right are answered each.
  bool sided() const { return has_sides(per); }

  bool operator==(const Question&) const = default;
};

/// The question of a trait. Precondition: it is not derived, and its kind was understood (as in
/// every rule set that compiles).
Question question(const RuleSet& rules, std::size_t trait);

/// The units that a person may choose from for a measure in `own`: `own` first, then those of the
/// same kind that are not more than a hundred times larger or smaller.
///
///     unit_choices(Unit::millimetre)  ->  mm, cm, in
std::vector<Unit> unit_choices(Unit own);

/// What an answer looks like, in words: `in mm, cm or in; usual are 80 mm to 340 mm`, `yes or no`,
/// `soft, medium or firm`, `a size with its system, such as EU 39.5`.
std::string form_words(const Question& question);

/// The two words for a measure's plausible range: `80 mm to 340 mm`, in the unit of the measure.
/// Precondition: the question has one.
std::string plausible_words(const Question& question);

/// The word by which records and programs name a form: `measure`, `yes or no`, `sock range`.
std::string_view in_words(AnswerForm form);

}  // namespace heelrule
