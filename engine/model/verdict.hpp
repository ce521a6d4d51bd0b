// What an inspection came to under a rule set: decided values and their reasons, no words yet.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/trait.hpp"

namespace heelrule {

enum class Status : std::uint8_t {
  pass,      ///< full credit
  part,      ///< some credit
  fail,      ///< no credit
  not_seen,  ///< cannot be decided from what was recorded; never a fail
  does_not_apply,
};

/// Whether a status is one of pass, part and fail.
constexpr bool is_judged(Status status) {
  return status == Status::pass || status == Status::part || status == Status::fail;
}

/// What a rule read on one side, and what that came to there.
struct SideReading {
  Side side = Side::none;
  double value = 0;      ///< stored unit, level index, or 0/1
  std::size_t band = 0;  ///< index of the band or level
  double credit = 0;     ///< millionths

  bool operator==(const SideReading&) const = default;
};

/// A trait of a side that was not recorded.
struct Missing {
  std::size_t trait = 0;
  Side side = Side::none;

  auto operator<=>(const Missing&) const = default;
};

/// One rule's outcome, or that of one side of a rule whose sides count each.
struct Finding {
  std::size_t rule = 0;
  Side side = Side::none;  ///< of a rule whose sides count each
  Status status = Status::not_seen;
  double weight = 0;                  ///< thousandths
  double credit = 0;                  ///< millionths; of pass, part and fail
  std::vector<SideReading> readings;  ///< of the sides that were seen
  std::size_t decisive = 0;           ///< index in `readings` of the one that the words speak of
  bool sides_alike = false;           ///< both sides were seen with the same value
  std::vector<Missing> missing;       ///< of what was not seen: what it would need
  bool whether_it_applies_is_open = false;
  bool cannot_be_worked_out = false;  ///< all was recorded, and the formula has no value there
  double gain = 0;  ///< points that the score would rise by if this finding passed in full
  std::optional<std::size_t> cap;  ///< of a must that failed: the grade that remains

  bool operator==(const Finding&) const = default;
};

/// A sum over findings. Exact: `earned` in thousandths of weight times millionths of credit.
struct Score {
  double earned = 0;
  double weight = 0;       ///< of what was seen, in thousandths
  double open_weight = 0;  ///< of what was not seen

  /// In points, 0 to 100; nothing where nothing was seen.
  std::optional<double> points() const;

  /// The lowest and highest score that it can still become: whatever was not seen fails, or passes
  /// in full. Also a side that was seen is no bound for its rule, since the rule may turn out not
  /// to apply, or never to be seen whole; so the score always lies between the two. 0 and 100 where
  /// there is no weight at all.
  double lowest_points() const;
  double highest_points() const;

  /// `earned` if whatever was not seen passes in full.
  double highest_earned() const;

  bool operator==(const Score&) const = default;
};

/// How a safety question was answered.
struct SafetyAnswer {
  std::size_t question = 0;  ///< index in `RuleSet::safety`
  bool yes = false;          ///< on either side
  bool asked = false;        ///< answered on every side, or yes on one
  std::vector<Side> sides;   ///< with a yes

  bool operator==(const SafetyAnswer&) const = default;
};

/// Where words come from: the band that a reading of a finding lies in, or its rule as a whole.
struct Spoken {
  std::size_t finding = 0;
  std::optional<std::size_t>
      reading;  ///< index in the finding's readings; nothing: the rule's own words

  bool operator==(const Spoken&) const = default;
};

struct Verdict {
  Score score;
  std::vector<Score> sections;          ///< as in `RuleSet::sections`
  std::optional<std::size_t> grade;     ///< caps obeyed; nothing where nothing was seen
  std::optional<std::size_t> uncapped;  ///< what the score alone would give
  std::size_t lowest_grade = 0;         ///< the worst grade that can still come out
  std::size_t highest_grade = 0;
  bool stands = false;            ///< nothing that is open can change the grade
  std::vector<Finding> findings;  ///< in the order of the rules
  std::vector<SafetyAnswer> safety;
  std::vector<Spoken> referrals;
  std::vector<Spoken> cautions;
  std::vector<Spoken> advice;         ///< by what each would gain, most first
  std::vector<Spoken> held_advice;    ///< kept back because a practitioner comes first
  std::vector<Missing> would_settle;  ///< of a provisional grade: what to record, weightiest first

  /// Whether a licensed practitioner comes before any advice.
  bool refers() const;

  bool operator==(const Verdict&) const = default;
};

}  // namespace heelrule
