// How much of a verdict is wanted, where there are very many.
#pragma once

#include <cstdint>

namespace heelrule {

enum class Detail : std::uint8_t {
  full,    ///< all there is to say
  failed,  ///< of the findings only those that did not pass in full, with advice; no sections
  brief,   ///< score, grade, safety, cautions and referrals
};

}  // namespace heelrule
