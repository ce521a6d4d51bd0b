// One student's record of one shoe as numbers, ready to be laid beside the others'.
#pragma once

#include <string>
#include <vector>

#include "engine/agreement/estimate.hpp"
#include "engine/model/inspection_row.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

struct ClassRecord {
  std::string observer;
  std::string shoe;              ///< the client and what the shoe is called: `C-014, navy lace-up`
  std::vector<double> values;    ///< by `number_place`, derived traits too; in the trait's own unit
  std::vector<double> sections;  ///< points, 0 to 100
  double score = unknown;        ///< points, 0 to 100
  double grade = unknown;        ///< counted from the worst, 0
};

/// A record that was read against `program.rules`. A marked size counts as the longest foot, in mm,
/// that it is made for; a blend of fibres is left out.
ClassRecord class_record(const Program& program, const InspectionRow& row);

}  // namespace heelrule
