// How a trait turns into credit, and what is said about it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/model/text.hpp"
#include "engine/quantity/quantity.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

/// Credit is counted in millionths, so that sums of weight · credit are exact whole numbers and no
/// order of addition can change a grade.
constexpr double full_credit = 1'000'000;

/// Weights are counted in thousandths, for the same reason.
constexpr double weight_step = 1'000;

/// What a band earns, in millionths: the same throughout, or a straight line from its lower to its
/// upper cut.
struct Credit {
  double from = 0;
  double to = 0;

  bool is_ramp() const { return from != to; }
  bool operator==(const Credit&) const = default;
};

/// What is said when a rule, or one of its bands, speaks.
struct Words {
  Text say;
  Text caution;
  Text referral;
  Text advice;

  bool operator==(const Words&) const = default;
};

/// The upper end of a band.
struct Cut {
  Quantity at;
  bool belongs_below =
      false;  ///< `up to`: the cut point is part of this band; `below`: of the next
  Span where;

  bool operator==(const Cut&) const = default;
};

/// A named stretch of a trait's range. The last band of a rule has no cut.
struct Band {
  Located<std::string> name;
  std::optional<Cut> cut;
  bool cut_unread = false;  ///< a cut point was written and not understood; it has been reported
  Located<Credit> earns;
  Words words;

  bool operator==(const Band&) const = default;
};

/// A level, choice or answer, and what it earns.
struct LevelCredit {
  Located<std::string> level;
  Located<Credit> earns;
  Words words;

  bool operator==(const LevelCredit&) const = default;
};

/// How the two sides of a trait count.
enum class SideRule : std::uint8_t {
  worse,  ///< the side with less credit counts
  mean,   ///< the mean of both credits counts
  each,   ///< each side is a finding of its own, with half the weight
};

struct Rule {
  std::string name;
  Span where;  ///< of the name
  Text title;
  Located<std::string> section;
  Located<double> weight;  ///< in thousandths
  std::optional<Located<std::string>>
      caps;  ///< of a must: the best grade that remains when it fails
  Located<std::string> reads;
  SideRule sides = SideRule::worse;
  std::optional<Located<std::string>> applies;  ///< a formula
  std::vector<Band> bands;                      ///< lowest first; empty where `levels` are used
  std::vector<LevelCredit> levels;
  Span credit_where;  ///< of the `bands` or `levels`
  Text because;
  Text source;
  Words words;  ///< of the whole rule; `say` is empty
  bool despite_referral = false;
  bool protects = false;  ///< passing what should fail would do harm: a decision rule may guard it

  bool operator==(const Rule&) const = default;
};

/// The rule's name in words: `heel_pitch` is `heel pitch`.
std::string in_words(const std::string& name);

}  // namespace heelrule
