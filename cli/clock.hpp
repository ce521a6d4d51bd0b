// The day and the time, as records write them.
#pragma once

#include <string>

namespace heelrule {

/// Today where this machine stands (ISO 8601): `2026-10-03`.
std::string today();

/// Now, in universal time, to the minute (ISO 8601): `2026-10-03T10:12Z`.
std::string now();

}  // namespace heelrule
