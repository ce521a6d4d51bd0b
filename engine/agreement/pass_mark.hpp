// Every pass mark that a sheet leads to.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/agreement/angoff.hpp"
#include "engine/agreement/borderline_group.hpp"
#include "engine/agreement/borderline_regression.hpp"
#include "engine/agreement/hofstee.hpp"
#include "engine/reading/read_pass_sheet.hpp"

namespace heelrule {

enum class PassMethod : std::uint8_t {
  borderline_regression,
  borderline_group,
  angoff,
  hofstee,
};

/// A pass mark, in points of the marks, and what would come of it.
struct PassMark {
  PassMethod method = PassMethod::borderline_regression;
  Estimate cut;
  std::optional<std::size_t> pass;  ///< how many students have that mark or more
  Estimate pass_share;              ///< of all students, with Wilson's interval
};

struct PassMarks {
  std::vector<PassMark> marks;
  std::optional<BorderlineRegression> regression;
  std::optional<BorderlineGroup> group;
  std::optional<Angoff> judges;
  std::optional<Hofstee> compromise;
};

/// By each method for which the sheet has what it needs. Ratings count 1, 2, … from the worst.
/// Angoff's number of tasks becomes points by the highest mark.
PassMarks pass_marks(const PassSheet& sheet);

}  // namespace heelrule
