// A place in a source: which one, and which bytes of it.
#pragma once

#include <compare>
#include <cstdint>

namespace heelrule {

/// A half-open range of byte offsets in one of the `Sources`. Bytes everywhere; columns are counted
/// only when a diagnostic is printed.
struct Span {
  std::uint32_t source = 0;
  std::uint32_t begin = 0;
  std::uint32_t end = 0;

  auto operator<=>(const Span&) const = default;
};

/// A value together with the place where it was written.
template <class T>
struct Located {
  T value{};
  Span where;

  bool operator==(const Located&) const = default;
};

}  // namespace heelrule
