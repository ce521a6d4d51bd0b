// What the judgements of a fitting are called where programs read them.
#pragma once

#include <string_view>

#include "engine/fitting/foot_change.hpp"
#include "engine/fitting/shoe_advice.hpp"
#include "engine/fitting/sock_advice.hpp"

namespace heelrule {

/// `misread`, `as expected`, `more than half a size`, `a whole size or more`.
std::string_view name_of(Lengthening lengthening);

/// `one pair`, `fill`, `two pairs`.
std::string_view name_of(Remedy remedy);

/// `right`, `too short`, `too long`.
std::string_view name_of(SockFit fit);

/// `free`, `tight`, `cramped`.
std::string_view name_of(Cramping cramping);

}  // namespace heelrule
