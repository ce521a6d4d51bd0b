// A finding as a ruler: what was read, on the bands of its rule.
#pragma once

#include <optional>
#include <string>

#include "engine/drawing/ruler.hpp"
#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// A finding with the record that it was read from.
struct FindingOfRecord {
  const Inspection& inspection;
  const Finding& finding;
};

/// The ruler of a finding whose rule has bands, in the unit in which its trait is printed; nothing
/// for levels, and where nothing was read. Every number on it is printed as in the finding's own
/// words. Bands that earn all are open, those that earn nothing dense, and the others sparse.
/// `earlier` is the same finding of an earlier record: its readings are faint.
std::optional<Ruler> finding_ruler(const Program& program, std::string id, std::string title,
                                   const FindingOfRecord& now,
                                   const std::optional<FindingOfRecord>& earlier);

/// What a picture of a finding is called on its page: `ruler-7`.
std::string ruler_id(std::size_t finding);

}  // namespace heelrule
