// What one person recorded of one client and one pair of shoes on one day.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/model/trait.hpp"
#include "engine/quantity/fibre_content.hpp"
#include "engine/quantity/shoe_size.hpp"
#include "engine/quantity/sock_range.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

/// Readings of a measure, in the stored unit; more than one where it was repeated. Never empty, all
/// finite.
struct Readings {
  std::vector<double> stored;
  Unit unit = Unit::count;  ///< in which they were written
  std::optional<double>
      doubt;  ///< standard uncertainty of one reading, stored unit, where the record states it
  bool confirmed = false;  ///< outside the plausible range, and true

  bool operator==(const Readings&) const = default;
};

/// The mean of the readings, settled (see quantity/settle.hpp).
double mean(const Readings& readings);

/// A level of the trait's scale or choices, by its index.
struct LevelSeen {
  std::size_t level = 0;
  bool operator==(const LevelSeen&) const = default;
};

struct Answer {
  bool yes = false;
  bool operator==(const Answer&) const = default;
};

/// Looked for, or left out, and not seen.
struct NotSeen {
  std::string reason;  ///< may be empty
  bool operator==(const NotSeen&) const = default;
};

using Value = std::variant<Readings, LevelSeen, Answer, FibreContent, ShoeSize, SockRange, NotSeen>;

/// The number that a value is by itself: the mean of readings, the index of a level, 1 for yes and
/// 0 for no. Not-a-number for all else.
double plain_number(const Value& value);

/// One trait of one side.
struct Observation {
  std::size_t trait = 0;  ///< index in the traits of the rule set that the record was read against
  Side side = Side::none;
  Value value;
  std::string note;
  Span where;

  bool operator==(const Observation&) const = default;
};

/// That an answer was changed after the record was finished.
struct Amendment {
  std::string answer;   ///< which: `foot_length.left`, `inspection.client`
  std::string was;      ///< what stood there, in words
  std::string when;     ///< ISO 8601
  std::string by;       ///< a person's code
  std::string because;  ///< may be empty

  bool operator==(const Amendment&) const = default;
};

struct Inspection {
  std::string rules;  ///< the rule set that it was made for, as the record names it
  std::string date;   ///< ISO 8601, `2026-10-03`; may be empty
  std::string observer;
  std::string client;
  std::string shoe_label;
  std::string shoe_marked;
  std::string note;
  std::vector<Amendment> amendments;      ///< in the order in which they were made
  std::vector<Observation> observations;  ///< by trait, then side; at most one of each

  bool operator==(const Inspection&) const = default;

  /// What was recorded of a trait on a side, if anything was.
  const Observation* find(std::size_t trait, Side side) const;
};

}  // namespace heelrule
