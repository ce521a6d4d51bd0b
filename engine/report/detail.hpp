// How much the line of a verdict says, where there are very many.
#pragma once

#include <cstdint>

namespace heelrule {

enum class Detail : std::uint8_t {
  full,    ///< all there is to say
  failed,  ///< what is brief, and the findings that did not pass in full
  brief,   ///< score, grade, safety, cautions and referrals
};

}  // namespace heelrule
