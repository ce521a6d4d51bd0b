// A reading that may be a little off, and how the truth lies around it.
#pragma once

#include <cstddef>
#include <cstdint>
#include <variant>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Of a measure: the truth is spread normally around the reading.
struct Spread {
  double uncertainty = 0;  ///< standard, stored unit, above 0

  bool operator==(const Spread&) const = default;
};

/// Of a level: the truth may be the next one up or down. Half of `chance` lies on either side; at
/// an end of the scale the half that would lie beyond it goes to the level that was recorded, as it
/// does where each level is mistaken for its neighbours alike.
struct OneLevelOff {
  double chance = 0;        ///< 0 to 0.5, above 0
  std::size_t highest = 0;  ///< index of the last level

  bool operator==(const OneLevelOff&) const = default;
};

/// One reading with its doubt. A value that the record gives once for both sides is one reading: if
/// it is off, it is off on both.
struct DoubtfulReading {
  std::size_t trait = 0;
  Side side = Side::none;        ///< none: no sides, or both
  std::vector<Register> inputs;  ///< where the program reads it: one or two, never none
  double value = 0;              ///< as recorded: stored unit, or index of the level
  std::variant<Spread, OneLevelOff> doubt;

  bool operator==(const DoubtfulReading&) const = default;
};

/// The readings of a record that are in doubt and that a rule depends on, in the order of the
/// program's inputs.
std::vector<DoubtfulReading> doubtful_readings(const Program& program,
                                               const Inspection& inspection);

/// One value that the truth may have, by a random word: each value comes as often as its chance.
///
///     243 mm with 1 mm, word 2^31  ->  243 mm and a hair
double drawn(const DoubtfulReading& reading, std::uint32_t word);

/// The reading if it were a little off: by two standard uncertainties, or by one level, up or down.
/// At the end of a scale it stays.
double a_little_off(const DoubtfulReading& reading, bool up);

}  // namespace heelrule
