// Which questions a class does not agree on.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/agreement/topic_agreement.hpp"

namespace heelrule {

/// A question on which the class does not agree, whoever is left out.
struct Confusing {
  std::size_t topic = 0;                 ///< as in `topics`
  std::optional<std::size_t> one_level;  ///< of levels: which two are mixed up most
  std::optional<std::size_t> other_level;
  double of_the_misses = 0;  ///< what share of the pairs that do not agree are these two
  double error = unknown;    ///< of numbers: technical error, in the trait's unit
  double doubt = unknown;    ///< as the rule set states it
};

/// The confusing ones among the recorded traits. Lines drawn by house choice: a question confuses
/// where AC is below 0.5, or the technical error is above twice the stated doubt (alpha below 0.5
/// where none is stated and subjects differ), and stays so with any one of the `observers` left
/// out. Needs four of them, and three subjects.
std::vector<Confusing> confusing_topics(const Program& program,
                                        const std::vector<TopicAgreement>& topics,
                                        std::size_t observers);

}  // namespace heelrule
