#include "engine/doubt/draws.hpp"

#include "engine/quantity/random_stream.hpp"
#include "engine/scoring/fill_row.hpp"

namespace heelrule {
namespace {

// Any seed does; it is fixed, so that a report can be made again.
constexpr RandomKey seed{0x4A43474D, 101};

constexpr std::size_t words_at_a_time = std::tuple_size_v<RandomWords>;

}  // namespace

void fill_rows(const Program& program, const Inspection& inspection, Block& block) {
  fill_row(program, inspection, block, 0);
  for (Register i = 0; i < program.inputs.size(); ++i) {
    Column& column = block.column(i);
    column.fill(column[0]);
  }
}

void draw(const DoubtfulReading& reading, Sample sample, std::size_t first_draw, Block& block) {
  Column& column = block.column(reading.inputs.front());
  for (std::size_t row = 0; row < block_rows; row += words_at_a_time) {
    const auto place = static_cast<std::uint32_t>((first_draw + row) / words_at_a_time);
    const RandomWords words =
        random_words({place, reading.inputs.front(), static_cast<std::uint32_t>(sample), 0}, seed);
    for (std::size_t i = 0; i < words_at_a_time; ++i) {
      column[row + i] = drawn(reading, words[i]);
    }
  }
  for (std::size_t i = 1; i < reading.inputs.size(); ++i) {
    block.column(reading.inputs[i]) = column;
  }
}

void draw(std::span<const DoubtfulReading> readings, Sample sample, std::size_t first_draw,
          Block& block) {
  for (const DoubtfulReading& reading : readings) {
    draw(reading, sample, first_draw, block);
  }
}

}  // namespace heelrule
