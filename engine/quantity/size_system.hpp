// The systems in which shoes are marked: how each is written, its range and its steps.
#pragma once

#include <cstdint>
#include <string_view>

#include "engine/quantity/millimetres.hpp"
#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// Every system that a marked size may be in.
enum class SizeSystem : std::uint8_t {
  mondopoint,      ///< ISO 9407: the foot length in mm, and perhaps the foot width: `MP 245/95`
  european,        ///< Paris points, 2/3 cm of last length each: `EU 39.5`
  british,         ///< English sizes, 1/3 in of last length each: `UK 6.5`
  british_child,   ///< English sizes of children, from 4 in at 0: `UK child 13`
  american_men,    ///< `US M 9`
  american_women,  ///< `US W 8.5`
  american_child,  ///< the first run of the children's sizes, 0 .. 13.5: `US child 11`
  american_youth,  ///< the run that follows it, from 1 again: `US youth 1`
  japanese,        ///< JIS S 5037: the foot length in cm, and perhaps a girth code: `JP 25.0 EE`
  chinese,         ///< GB/T 43293: as Mondopoint; cm are read too, with their decimal: `CN 245`
  russian,         ///< GOST 11373: the foot length in mm: `RU 245`
};

/// What is known of a system. Numbers of sizes are counted in halves, so that 39.5 is 79.
struct SizeSystemFacts {
  std::string_view mark;     ///< what stands in front of the number: `US W`
  std::string_view numbers;  ///< what the numbers are, in words: `Paris points`
  int lowest;                ///< smallest number that can be marked, in halves
  int highest;               ///< largest number, in halves
  int step;                  ///< from one size to the next, in halves
  double whole_size;         ///< mm in what the trade calls a whole size
  int length_per_number;     ///< mm of foot length per unit; 0 if the number is no foot length
};

/// The facts of `system`. A Paris point is 20/3 mm and an English size 25.4/3 mm of last length
/// (ISO 19407); Mondopoint, and what follows it, calls 10 mm a whole size and 5 mm a half (DIN
/// 66074-2, GB/T 3293.1). The ends of the ranges are ours: wide enough for any foot, narrow enough
/// to catch a slip of the pen.
const SizeSystemFacts& facts(SizeSystem system);

/// A whole size in mm: 6.667 for Paris points, 8.467 for English and American sizes, 10 for foot
/// lengths.
Millimetres whole_size(SizeSystem system);

/// The system whose mark stands in front of a size, in capital or small letters; `Mondopoint`,
/// `US men` and `US women` are read too. `number` is what follows, for the messages.
///
///     parse_size_system("US", "9")
///         ->  problem "`US 9` does not say whose size it is",
///             hint "say whose: `US M`, `US W`, `US child` or `US youth`"
Parsed<SizeSystem> parse_size_system(std::string_view mark, std::string_view number);

}  // namespace heelrule
