// What records are marked against: one reference inspection, or what a panel of them agrees on.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/reading/read_marking_rules.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

enum class ReferenceState : std::uint8_t {
  seen,      ///< it has a value
  not_seen,  ///< it says that nothing is to be seen
  silent,    ///< it says nothing of it
  split,     ///< no more than half of the panel agrees: held against nobody
};

/// What the reference says of one trait on one side.
struct ReferenceItem {
  std::size_t trait = 0;
  Side side = Side::none;
  ReferenceState state = ReferenceState::silent;
  std::optional<Value> value;  ///< where it is seen; of a split panel what it leans to, if anything
  double uncertainty = 0;      ///< of a measure: standard, stored unit; 0 where nothing is known
  double deviation = 0;        ///< of a measure of a panel: robust, of one reading, stored unit
  std::size_t asked = 0;       ///< how many of the panel say anything of it
  std::size_t agreed = 0;      ///< how many of them say the same, or lie within tolerance of it
};

struct Reference {
  Inspection inspection;             ///< what it says as one record; of a panel its consensus
  Verdict verdict;                   ///< on that
  std::vector<ReferenceItem> items;  ///< of every trait that is recorded, by trait and side
  std::vector<double> worths;        ///< by trait, in points (see `trait_worths`)
  std::size_t panel = 1;             ///< how many references there are
};

/// One reference, or the consensus of several; all were read against `program.rules`. Of a panel
///
///  - a trait is seen where more of those who say anything of it saw it than did not;
///  - a measure is the robust mean (Algorithm A of ISO 13528). Its standard uncertainty is that of
///    one reading put together by squares with 1.25·s/√p, p readings of robust deviation s (ISO
///    13528:2015, 7.7.3, from memory);
///  - of all else the value that was given most often counts, and of equals the one that was given
///    first;
///  - the panel is split where no more than half of those who saw it agree with that: say the same,
///    or lie within the trainer's tolerance of it, or else within two standard uncertainties of the
///    difference between two readings, by what the rule set says of one. Where it says nothing, all
///    lie within.
///
/// Precondition: `references` is not empty.
Reference make_reference(const Program& program, const MarkingRules& marking,
                         const std::vector<Inspection>& references);

}  // namespace heelrule
