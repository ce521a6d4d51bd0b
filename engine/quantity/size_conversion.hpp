// From a foot to the size to ask for, and from a marked size to the feet it is made for.
//
// A printed size is a promise that makers keep to about one size. These functions say what the
// standard means by it; what fits is decided inside the shoe.
#pragma once

#include <cstdint>
#include <optional>

#include "engine/quantity/millimetres.hpp"
#include "engine/quantity/parsed.hpp"
#include "engine/quantity/shoe_size.hpp"
#include "engine/quantity/size_system.hpp"

namespace heelrule {

/// Lasts for children are cut with another allowance than lasts for adults, so the same Paris
/// points mean another foot: EU 34 is made for 213 mm in an adult's shoe and for 210 mm in a
/// child's.
enum class Wearer : std::uint8_t { adult, child };

/// Whose shoe a marked size is taken for when nobody says: children's systems and EU below 33.5,
/// where the table for adults begins, are a child's; all else is an adult's.
Wearer usual_wearer(const ShoeSize& size);

/// The foot length for which the size is the exact one:
///
///     MP, CN, RU, JP       the marked length, by definition
///     EU, adult            (EU - 2) · 20/3 mm, from EU = 1.5 · foot length in cm + 2 (ISO 19407)
///     EU, child            the table of ISO/TS 19407 (secondary source);
///     UK, US men, women    half way between its rows for sizes that it passes over
///
/// UK and US sizes of children are a problem, because nothing confirms the copies of their table;
/// so is a size beyond the table. The hint says what to do instead.
///
///     nominal_foot(EU 39.5, Wearer::adult)  ->  250 mm
Parsed<Millimetres> nominal_foot(const ShoeSize& size, Wearer wearer);

/// The feet that a size is made for: from half way to the next smaller size up to half way to the
/// next larger one, by their nominal feet. 2.5 mm to either side for foot lengths (3.75 for 7.5 mm
/// steps), 1.667 for Paris points; at the ends of a table 2.5. Problems as for `nominal_foot`.
///
///     feet_of(EU 39, Wearer::adult)  ->  245 .. 248.333 mm
Parsed<FootRange> feet_of(const ShoeSize& size, Wearer wearer);

/// The ends of `feet_of` for the usual wearer; none where the conversion is not known.
std::optional<Millimetres> shortest_foot(const ShoeSize& size);
std::optional<Millimetres> longest_foot(const ShoeSize& size);

/// The size to ask for in `system`, for a foot measured standing. A foot half way between two sizes
/// gets the smaller, as in the table of ISO 19407 (there 215 mm, which is 34.25, is EU 34). So this
/// is the inverse of `feet_of`, with its shorter end excluded. Russian and Mondopoint sizes are
/// given in 5 mm steps. A foot outside 80 .. 400 mm, or beyond the table, is a problem; so is a
/// column that is not trusted.
///
///     size_for(SizeSystem::british, Millimetres(245), Wearer::adult)        ->  UK 6
///     size_for(SizeSystem::british_child, Millimetres(180), Wearer::child)  ->  problem
Parsed<ShoeSize> size_for(SizeSystem system, Millimetres foot, Wearer wearer);

}  // namespace heelrule
