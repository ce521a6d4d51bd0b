// The mark of a school, to stand at the head of its pages.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "engine/quantity/parsed.hpp"

namespace heelrule {

enum class MarkKind : std::uint8_t { png, svg };

/// A picture that has been looked at: a page may hold it.
struct SchoolMark {
  MarkKind kind = MarkKind::png;
  std::string base64;

  /// `data:image/png;base64,…`. As the source of an `img`, an SVG runs no script and loads nothing
  /// (SVG 2, 2.7.1: secure static mode).
  std::string address() const;
};

/// The largest mark, in bytes, and in pixels either way.
constexpr std::size_t most_mark_bytes = std::size_t{256} << 10U;
constexpr std::uint32_t most_mark_pixels = 4096;

/// Reads the bytes of a mark. A problem unless they are a PNG by its signature and first chunk
/// (PNG, third edition, 5.2 and 11.2.1), or an SVG: UTF-8 whose first element is `svg`, without a
/// document type, so that no entity can grow.
Parsed<SchoolMark> school_mark(std::string_view bytes);

/// Bytes in base64 (RFC 4648, section 4).
///
///     base64("foob")  ->  "Zm9vYg=="
std::string base64(std::string_view bytes);

}  // namespace heelrule
