// Values that a record may truly have, drawn at random by the thousand, as rows for a program.
#pragma once

#include <cstdint>
#include <span>

#include "engine/doubt/doubtful_reading.hpp"
#include "engine/model/inspection.hpp"
#include "engine/scoring/block.hpp"

namespace heelrule {

/// How many draws a report rests on. A chance near one half is then known to within 0.01, 19 times
/// in 20 (two standard errors of a share).
constexpr std::size_t draw_count = 10'000;

/// Which of two independent samples of draws.
enum class Sample : std::uint32_t { first, second };

/// Puts the record as it stands into every row of a block.
void fill_rows(const Program& program, const Inspection& inspection, Block& block);

/// Overwrites one reading, in all rows of a block, by its draws `first_draw`, `first_draw` + 1 and
/// so on; `first_draw` is a multiple of 4. What is drawn depends on the sample, on the draw's
/// number and on where the program reads it, on nothing else: the same on every machine, in every
/// order and with any number of threads (JCGM 101:2008, 7.3). A reading that two rules share is one
/// draw for both.
void draw(const DoubtfulReading& reading, Sample sample, std::size_t first_draw, Block& block);

/// The same for several readings.
void draw(std::span<const DoubtfulReading> readings, Sample sample, std::size_t first_draw,
          Block& block);

}  // namespace heelrule
