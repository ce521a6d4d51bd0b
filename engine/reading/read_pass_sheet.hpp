// What a pass mark is to be set from.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/reading/tree.hpp"
#include "engine/source/checked.hpp"
#include "engine/source/sources.hpp"

namespace heelrule {

/// A student's mark, and what the assessor thought of the whole of the work.
struct MarkedStudent {
  std::string name;
  double mark = 0;
  std::optional<std::size_t> rating;  ///< as in `PassSheet::ratings`
};

/// How likely a judge holds it that somebody who just passes gets each task right.
struct PassJudge {
  std::string name;
  std::vector<double> chances;  ///< 0 to 1, one for each task
};

/// Between which marks, and which shares of students who fail, a pass mark is acceptable.
struct AcceptablePass {
  double least_mark = 0;
  double most_mark = 0;
  double least_fails = 0;  ///< shares, 0 to 1
  double most_fails = 0;
};

struct PassSheet {
  std::string title;
  double most = 100;                 ///< the highest mark
  std::vector<std::string> ratings;  ///< of the whole work, worst first
  std::size_t borderline = 0;        ///< which of them means neither pass nor fail
  std::vector<MarkedStudent> students;
  std::vector<PassJudge> judges;
  std::optional<AcceptablePass> acceptable;
};

/// Reads a pass sheet (YAML, or JSON if its first sign is `{`). Each part may be left out, but one
/// way to a pass mark must be there: students with ratings, judges, or students with an acceptable
/// range.
Checked<PassSheet> load_pass_sheet(const Sources& sources, std::uint32_t source);

}  // namespace heelrule
