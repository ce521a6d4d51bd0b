// Eight bytes of a text as one number, for reading that looks at as many at a time.
#pragma once

#include <cstdint>
#include <cstring>

namespace heelrule {

/// The eight bytes from `from` on, in the machine's own order. All of them must be readable.
inline std::uint64_t eight_bytes(const char* from) {
  std::uint64_t bytes = 0;
  std::memcpy(&bytes, from, sizeof bytes);
  return bytes;
}

}  // namespace heelrule
