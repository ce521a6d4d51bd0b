// Width codes of JIS S 5037:1998: letters that stand for the girth of the foot at the ball.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "engine/quantity/millimetres.hpp"
#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// From narrow to wide. Each code is 6 mm of girth wider than the one before it.
enum class GirthCode : std::uint8_t { a, b, c, d, e, ee, eee, eeee, f, g };

/// Whose feet a code was defined for. The same letters mean other girths for each.
enum class GirthTable : std::uint8_t { men, women, children };

/// `A` … `G`, as marked.
std::string_view show(GirthCode code);

/// The code written so, in capital or small letters, if there is one.
std::optional<GirthCode> find_girth_code(std::string_view text);

/// Ball girth at the centre of a code, for a foot length in steps of 5 mm:
///
///     men    189 mm + 6 mm · i + 3 mm · (length - 200 mm) / 5 mm,  length 200 .. 300 mm, A .. G
///     women  183 mm + 6 mm · i + 3 mm · (length - 195 mm) / 5 mm,  length 195 .. 270 mm, A .. F
///
/// with i = 0 for A. Rule of JIS S 5037:1998, adults from 12 years, from secondary sources. The
/// standard may leave the narrowest cells at the shortest lengths empty, so a girth is no promise
/// that the size is made. For children it is a problem: their girths could not be checked.
///
///     ball_girth(GirthCode::ee, Millimetres(250), GirthTable::men)  ->  249 mm
Parsed<Millimetres> ball_girth(GirthCode code, Millimetres length, GirthTable table);

/// The code whose band holds this girth: from 3 mm below its centre (included) to 3 mm above
/// (excluded), which is -3 .. +2 in whole mm. The length is taken to the nearest 5 mm, half way to
/// the shorter. A girth below A or above the widest code is a problem.
///
///     girth_code_for(Millimetres(251), Millimetres(248), GirthTable::men)  ->  EE
Parsed<GirthCode> girth_code_for(Millimetres length, Millimetres girth, GirthTable table);

}  // namespace heelrule
