// A finding as a ruler: what was read, on the bands of its rule.
#pragma once

#include <optional>
#include <string>

#include "engine/doubt/doubt.hpp"
#include "engine/drawing/ruler.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// A finding with its doubt.
struct DoubtedFinding {
  const Finding& finding;
  const FindingDoubt* doubt;  ///< null where readings are taken as they stand
};

/// The ruler of a finding whose rule has bands, in the unit in which its trait is printed; nothing
/// for levels, and where nothing was read. Every number on it is printed as in the finding's own
/// words. Bands that earn all are open, those that earn nothing dense, and the others sparse. A
/// notch reaches two standard uncertainties either way, as the ± of the words does, also where it
/// was worked out. `earlier` is the same finding of an earlier record: its readings are faint.
std::optional<Ruler> finding_ruler(const Program& program, std::string id, std::string title,
                                   const DoubtedFinding& now,
                                   const std::optional<DoubtedFinding>& earlier);

/// What a picture of a finding is called on its page: `ruler-7`.
std::string ruler_id(std::size_t finding);

}  // namespace heelrule
