// How far a class agrees, and what keeps it from agreeing more.
#pragma once

#include <vector>

#include "engine/agreement/confusing_topic.hpp"
#include "engine/agreement/split_shoe.hpp"
#include "engine/agreement/stands_apart.hpp"

namespace heelrule {

struct ClassAgreement {
  std::vector<TopicAgreement> topics;
  std::vector<StandsApart> apart;
  std::vector<Confusing> confusing;
  std::vector<SplitShoe> split;
};

/// All of it for the records of a class, which were made by `program.rules`.
ClassAgreement class_agreement(const Program& program, const ClassTable& table);

}  // namespace heelrule
