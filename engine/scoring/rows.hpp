// Sets of rows of a block.
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>

#include "engine/scoring/block.hpp"

namespace heelrule {

/// A set of rows: bit n is for row n.
using Rows = std::uint64_t;
static_assert(block_rows == 64);

/// The rows of an evaluated block in which a contribution applies, or may, and does not pass in
/// full.
Rows rows_without_pass(const Contribution& contribution, const Block& block);

/// Those of them in which it is not decided.
Rows rows_not_seen(const Contribution& contribution, const Block& block);

/// Those in which it applies, and a side was seen that lacks credit.
Rows rows_with_lack(const Contribution& contribution, const Block& block);

/// Those in which it applies.
Rows rows_that_apply(const Contribution& contribution, const Block& block);

/// The first rows of a block.
constexpr Rows first_rows(std::size_t count) {
  return count < block_rows ? (Rows{1} << count) - 1 : ~Rows{0};
}

constexpr bool has_row(Rows rows, std::size_t row) { return (rows >> row & 1U) != 0; }

/// Calls `function` with each row of a set, in order.
template <class Function>
void for_each_row(Rows rows, Function function) {
  for (; rows != 0; rows &= rows - 1) {
    function(static_cast<std::size_t>(std::countr_zero(rows)));
  }
}

}  // namespace heelrule
