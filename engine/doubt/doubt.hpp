// How sure a verdict is: of each finding, and of the grade.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/doubt/better_grades.hpp"
#include "engine/doubt/doubtful_reading.hpp"
#include "engine/doubt/fewest_readings.hpp"
#include "engine/doubt/sensitivity.hpp"
#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// What a rule read on one side, with its doubt.
struct SideDoubt {
  double uncertainty = 0;  ///< standard, stored unit; 0 of a level, and where nothing is in doubt
  std::vector<double> bands;           ///< the chance of each band or level
  std::optional<std::size_t> guarded;  ///< a failing band that the decision rule does not rule out

  bool operator==(const SideDoubt&) const = default;
};

/// Chances of what a finding may truly be. They add up to 1.
struct StatusChances {
  double pass = 0;
  double part = 0;
  double fail = 0;
  double open = 0;  ///< not seen, or does not apply

  bool operator==(const StatusChances&) const = default;
};

struct FindingDoubt {
  StatusChances chances;
  double sure = 1;               ///< the chance that it truly is what it was found to be
  bool in_doubt = false;         ///< a reading that it needs is in doubt
  bool is_clear = true;          ///< surer than the rule set's limit
  std::vector<SideDoubt> sides;  ///< as `Finding::readings`

  bool operator==(const FindingDoubt&) const = default;
};

/// Chances of one grade.
struct GradeDoubt {
  double chance = 0;    ///< by what was seen
  double surely = 0;    ///< that it comes out whatever was not seen
  double possibly = 0;  ///< that what was not seen leaves it within reach

  bool operator==(const GradeDoubt&) const = default;
};

/// How much of what is in doubt comes from one reading.
struct ReadingEffect {
  std::size_t reading = 0;  ///< index in `Doubt::readings`
  Effect effect;

  bool operator==(const ReadingEffect&) const = default;
};

struct Doubt {
  std::size_t draws = 0;                  ///< on which the chances of grades rest
  std::vector<DoubtfulReading> readings;  ///< those in doubt that a rule depends on
  std::vector<FindingDoubt> findings;     ///< as `Verdict::findings`
  Target target = Target::score;          ///< of what `take_again` speaks
  std::vector<ReadingEffect> take_again;  ///< what is worth reading again, most worth first
  FewestReadings fewest;                  ///< that could move the grade
  std::vector<BetterGrade> better;        ///< what would have to be changed for each
  std::vector<GradeDoubt> grades;         ///< as in the rule set

  bool operator==(const Doubt&) const = default;
};

/// How sure the verdict on an inspection is, which `grade` gave by the same program.
///
/// Of a value that is a sum of multiples of measures, the chance of each band is that of JCGM
/// 106:2012, to some 15 digits; of a level it follows from its confusion; of everything else, of
/// findings and of grades it is a share of `draw_count` draws (JCGM 101:2008). A trait that was not
/// seen is never guessed at: it counts by what it could still make of the grade. Without any doubt
/// the chances are 0 and 1, and say what the verdict says.
///
/// What is worth reading again is told by shares of the variance of the grade, or of the score
/// where another grade comes out less than once in a hundred draws.
Doubt doubt_of(const Program& program, const Inspection& inspection, const Verdict& verdict);

}  // namespace heelrule
