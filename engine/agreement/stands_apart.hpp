// Which students of a class stand apart from the others.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "engine/agreement/standing.hpp"
#include "engine/agreement/topic_agreement.hpp"

namespace heelrule {

/// A student who stands apart.
struct StandsApart {
  enum class How : std::uint8_t {
    lenient,     ///< gives more points than the others
    severe,      ///< gives fewer
    scattered,   ///< now more, now fewer
    at_odds,     ///< meets the others on fewer of the named answers, whichever
    reads_high,  ///< measures more than the others
    reads_low,
  };

  std::size_t observer = 0;
  How how = How::lenient;
  std::optional<std::size_t> topic;  ///< of `reads_high`, `reads_low`: which, as in `topics`
  Standing standing;
};

/// Everybody who stands apart by more than chance gives (`far_biases`, `far_spreads`) and by enough
/// to be told. Lines drawn by house choice: a bias of the score is told from 2 points on, one of a
/// measurement from the doubt that the rule set states (or half the technical error where it states
/// none), a spread from twice the others' on, meeting the others less often from 5 % of the answers
/// on. Needs three of the `observers`.
std::vector<StandsApart> who_stands_apart(const Program& program,
                                          const std::vector<TopicAgreement>& topics,
                                          std::size_t observers);

}  // namespace heelrule
