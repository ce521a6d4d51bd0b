// The sizes that stand on socks and stockings: nearly always from one size to another.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "engine/quantity/millimetres.hpp"
#include "engine/quantity/parsed.hpp"
#include "engine/quantity/quantity.hpp"
#include "engine/quantity/shoe_size.hpp"

namespace heelrule {

/// From one shoe size to another: `EU 39-42`. The second follows the first, perhaps in the run of
/// numbers after it: `UK child 12-2` ends with UK adult 2.
struct ShoeSizeSpan {
  ShoeSize from;
  ShoeSize to;

  bool operator==(const ShoeSizeSpan&) const = default;
};

/// A metric sock number: foot length in cm, give or take one: `sock 25`.
struct MetricSockNumber {
  int number = 0;

  bool operator==(const MetricSockNumber&) const = default;
};

/// American traditional sock numbers: about the foot length in inches. They are no shoe sizes:
/// `US sock 10-13`.
struct TraditionalSockNumbers {
  double from = 0;
  double to = 0;

  bool operator==(const TraditionalSockNumbers&) const = default;
};

/// A sock range as marked. A QuantityRange is one of foot lengths: `24-26 cm`.
using SockRange =
    std::variant<ShoeSizeSpan, QuantityRange, MetricSockNumber, TraditionalSockNumbers>;

/// Reads a sock range as marked, with `-` or `–`. A single shoe size is a problem, and so are bare
/// numbers.
///
///     parse_sock_range("UK 6-8½")   ->  British, 6 to 8.5
///     parse_sock_range("24-26 cm")  ->  foot lengths of 240 to 260 mm
///     parse_sock_range("39-42")     ->  problem "`39-42` does not say in which system it is"
Parsed<SockRange> parse_sock_range(std::string_view text);

/// As `parse_sock_range` reads it: `EU 39-42`, `24-26 cm`, `sock 25`, `US sock 10-13`.
std::string show(const SockRange& range);

/// The feet that a sock is made for, both ends included:
///
///     shoe sizes           from the nominal foot of the first to that of the last, each for its
///                          usual wearer (`nominal_foot`)
///     lengths              as marked: the control dimension of socks is foot length (EN 13402)
///     metric sock number   give or take 1 cm (practice under GOST 8541, secondary source)
///     US traditional       the numbers in inches, roughly (trade articles)
///
/// A problem where the shoe sizes cannot be converted. When a foot is in two ranges of a rack, the
/// trade takes the smaller.
///
///     feet_of(EU 39-42)  ->  246.667 .. 266.667 mm
Parsed<FootRange> feet_of(const SockRange& range);

/// The ends of `feet_of`; none where the conversion is not known.
std::optional<Millimetres> shortest_foot(const SockRange& range);
std::optional<Millimetres> longest_foot(const SockRange& range);

}  // namespace heelrule
