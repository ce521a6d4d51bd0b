// Which shoes a class grades in different ways.
#pragma once

#include <cstddef>
#include <vector>

#include "engine/agreement/topic_agreement.hpp"

namespace heelrule {

/// A shoe of which fewer than half of all pairs of students give the same grade.
struct SplitShoe {
  std::size_t shoe = 0;
  double agreement = 0;
  std::vector<double> grades;       ///< how many gave each, from the worst
  std::vector<std::size_t> topics;  ///< on which they differ most on this shoe, at most three
};

/// The split ones among the shoes that three students or more graded, as in `ClassTable`.
std::vector<SplitShoe> split_shoes(const Program& program,
                                   const std::vector<TopicAgreement>& topics);

}  // namespace heelrule
